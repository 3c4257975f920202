package sternwright.app.web.estimate;

import java.util.List;
import org.jspecify.annotations.Nullable;
import sternwright.app.web.page.Pager;
import sternwright.app.web.page.State;

/** What the pages of estimates show. */
public final class EstimateView {
    private EstimateView() {}

    /**
     * An estimate in words.
     *
     * @param boat the boat
     * @param owner to whom it goes
     * @param number its number
     * @param opening the paragraph at its head
     * @param until last day on which the prices hold
     * @param lines the works
     * @param whole what belongs to the visit as a whole, and the sums
     * @param complete whether every price is known
     */
    public record Paper(
            String boat,
            String owner,
            String number,
            String opening,
            String until,
            List<Line> lines,
            List<Price> whole,
            boolean complete) {
        /** Copies the lists. */
        public Paper {
            lines = List.copyOf(lines);
            whole = List.copyOf(whole);
        }
    }

    /**
     * A work.
     *
     * @param number number of the line
     * @param work what is done
     * @param part on what
     * @param safety whether it is a safety item
     * @param why what it is good for, may be empty
     * @param reason why now, in a sentence
     * @param figure where the interval comes from
     * @param left what happens if it is left, may be empty
     * @param contents what the price pays for
     * @param unpriced what comes on top
     * @param price labour and supplies
     * @param cautions what to mind
     * @param refusal what is signed by refusing it; empty for what is no safety item
     * @param typed what was answered or typed: yes, no or empty
     * @param told whether the refusal was ticked
     * @param answer the answer as a state, null as long as there is none
     */
    public record Line(
            int number,
            String work,
            String part,
            boolean safety,
            String why,
            String reason,
            String figure,
            String left,
            String contents,
            List<String> unpriced,
            String price,
            List<String> cautions,
            String refusal,
            String typed,
            boolean told,
            @Nullable State answer) {
        /** Copies the lists. */
        public Line {
            unpriced = List.copyOf(unpriced);
            cautions = List.copyOf(cautions);
        }
    }

    /**
     * A line of money.
     *
     * @param what what for
     * @param quantity how much, may be empty
     * @param amount how much money
     * @param sum whether it is a sum
     */
    public record Price(String what, String quantity, String amount, boolean sum) {}

    /**
     * What the owner's page shows.
     *
     * @param secret the secret of the link, as it stands in the address
     * @param paper the estimate
     * @param answered by whom and when, empty as long as it is open
     * @param again whether somebody just tried to answer it again
     * @param name what was typed as name
     * @param wrong what must be put right
     */
    public record Owner(String secret, Paper paper, String answered, boolean again, String name, List<Wrong> wrong) {
        /** Copies the list. */
        public Owner {
            wrong = List.copyOf(wrong);
        }
    }

    /**
     * One thing to put right.
     *
     * @param field id of the field
     * @param says what
     */
    public record Wrong(String field, String says) {}

    /**
     * A link that does not work any more.
     *
     * @param key which words say why
     * @param day the day it ended, may be empty
     */
    public record Dead(String key, String day) {}

    /**
     * What the yard's page of one estimate shows.
     *
     * @param id its name in addresses
     * @param boatId the boat
     * @param paper the estimate
     * @param made by whom and when
     * @param state how it stands
     * @param stands the same in a sentence
     * @param mayLink whether a link can be made
     * @param mayWithdraw whether there is a link to withdraw
     * @param owes whether refusals are not on record yet
     * @param remarks what to look at before it goes out
     */
    public record Office(
            String id,
            String boatId,
            Paper paper,
            String made,
            State state,
            String stands,
            boolean mayLink,
            boolean mayWithdraw,
            boolean owes,
            List<String> remarks) {
        /** Copies the list. */
        public Office {
            remarks = List.copyOf(remarks);
        }
    }

    /**
     * A link, shown once.
     *
     * @param id the estimate
     * @param boat the boat
     * @param owner to whom it goes
     * @param link the address
     * @param until the last day on which it works
     */
    public record Link(String id, String boat, String owner, String link, String until) {}

    /**
     * One line of the list.
     *
     * @param id its name in addresses
     * @param boat the boat
     * @param owner the owner
     * @param dates when the visit is
     * @param gross what it comes to with tax
     * @param made when it was made
     * @param state how it stands
     */
    public record Entry(String id, String boat, String owner, String dates, String gross, String made, State state) {}

    /**
     * The list.
     *
     * @param entries the newest first
     * @param pager which stretch
     */
    public record Entries(List<Entry> entries, Pager pager) {
        /** Copies the list. */
        public Entries {
            entries = List.copyOf(entries);
        }
    }
}
