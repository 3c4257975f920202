package sternwright.app.files.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * Changes of a list with a line or a block for each member. Members are the same if they have the same id, or say the same where
 * they have none; which stay is the longest common row of both lists.
 */
final class YamlMembers {
    private final YamlSplices splices;
    private final List<Node> nodes;
    private final Shape<?> one;
    private final List<@Nullable Object> was;

    YamlMembers(YamlSplices splices, SequenceNode list, Shape<?> one) {
        this.splices = splices;
        this.nodes = list.getValue();
        this.one = one;
        this.was = new ArrayList<>();
        nodes.forEach(n -> was.add(YamlChange.member(one, n)));
    }

    void to(List<?> now, YamlChange.Inner inner) {
        int[][] common = common(now);
        Node stays = null;
        int i = 0;
        int j = 0;
        while (i < nodes.size() || j < now.size()) {
            boolean same = i < nodes.size() && j < now.size() && same(i, now.get(j));
            boolean instead = !same
                    && i < nodes.size()
                    && j < now.size()
                    && !named(now.get(j))
                    && common[i][j] == common[i + 1][j + 1];
            if (same || instead) {
                stays = nodes.get(i);
                inner.to(one, nodes.get(i++), now.get(j++));
            } else if (j == now.size() || i < nodes.size() && common[i + 1][j] >= common[i][j + 1]) {
                splices.removeMember(nodes.get(i++));
            } else {
                splices.insertMember(stays == null ? nodes.get(0) : stays, stays != null, now.get(j++));
            }
        }
    }

    /** Length of the longest common row of what is left from each pair of places. */
    private int[][] common(List<?> now) {
        int[][] common = new int[nodes.size() + 1][now.size() + 1];
        for (int i = nodes.size() - 1; i >= 0; i--) {
            for (int j = now.size() - 1; j >= 0; j--) {
                common[i][j] =
                        same(i, now.get(j)) ? common[i + 1][j + 1] + 1 : Math.max(common[i + 1][j], common[i][j + 1]);
            }
        }
        return common;
    }

    private boolean same(int i, Object member) {
        Object before = was.get(i);
        return named(member) && before instanceof Map<?, ?> block
                ? Objects.equals(block.get("id"), ((Map<?, ?>) member).get("id"))
                : member.equals(before);
    }

    private static boolean named(Object member) {
        return member instanceof Map<?, ?> block && block.get("id") != null;
    }
}
