package sternwright.boat;

/**
 * Names one part of a boat: {@code installation/part}.
 *
 * @param installationId installation
 * @param partId part in it
 */
public record PartRef(String installationId, String partId) implements Comparable<PartRef> {
    @Override
    public String toString() {
        return installationId + "/" + partId;
    }

    @Override
    public int compareTo(PartRef other) {
        int byInstallation = installationId.compareTo(other.installationId);
        return byInstallation != 0 ? byInstallation : partId.compareTo(other.partId);
    }
}
