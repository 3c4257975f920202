package sternwright.app.certificate;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.MessageDigest;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.SecureRandom;
import java.security.cert.CertificateEncodingException;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.Date;
import java.util.HexFormat;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.bouncycastle.asn1.pkcs.PrivateKeyInfo;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x500.X500NameBuilder;
import org.bouncycastle.asn1.x500.style.BCStyle;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.asn1.x509.NameConstraints;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cert.X509v3CertificateBuilder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.openssl.PEMException;
import org.bouncycastle.openssl.PEMParser;
import org.bouncycastle.openssl.jcajce.JcaPEMKeyConverter;
import org.bouncycastle.openssl.jcajce.JcaPEMWriter;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;
import org.bouncycastle.util.io.pem.PemObject;
import sternwright.app.files.problem.BadInput;
import sternwright.app.files.safe.SafeFile;

/** The yard's certificate authority. Its root is made once and kept in a folder; its key can be read by its owner alone. */
public final class YardAuthority {
    private static final String ROOT = "root.pem";
    private static final String KEY = "root-key.pem";
    private static final String SIGNED = "SHA256withECDSA";
    private static final Duration ROOT_LIFE = Duration.ofDays(3650);

    /** Clocks of phones lag; a certificate that begins tomorrow is refused today. */
    private static final Duration LAG = Duration.ofDays(2);

    private static final int LONGEST_NAME = 40;
    private static final SecureRandom RANDOM = new SecureRandom();

    private final X509Certificate root;
    private final PrivateKey key;
    private final Reach reach;
    private final Clock clock;

    private YardAuthority(X509Certificate root, PrivateKey key, Reach reach, Clock clock) {
        this.root = root;
        this.key = key;
        this.reach = reach;
        this.clock = clock;
    }

    /**
     * The authority of a folder; its root is made if there is none.
     *
     * @param folder where the root is kept
     * @param yard the yard's name, as the root shows it in a phone's list
     * @param own names of this machine and those the yard gave it: a new root vouches for them
     * @param clock the time
     * @return the authority
     * @throws BadInput if what is kept there is no root or its time is over
     * @throws IOException if the disk refuses
     */
    public static YardAuthority in(Path folder, String yard, Collection<String> own, Clock clock) throws IOException {
        Path certificate = folder.resolve(ROOT);
        Path secret = folder.resolve(KEY);
        try {
            if (!Files.exists(certificate)) {
                make(folder, yard, Reach.of(own), clock);
            }
            PrivateFile.close(folder);
            PrivateFile.close(secret);
            return read(certificate, secret, clock);
        } catch (GeneralSecurityException | OperatorCreationException | ClassCastException e) {
            throw BadInput.of(
                    folder.toString(),
                    "it holds no root that can be used",
                    "",
                    "Move the folder away: the next start makes a new root, which every phone has to be told to trust again.");
        }
    }

    private static void make(Path folder, String yard, Reach reach, Clock clock)
            throws IOException, GeneralSecurityException, OperatorCreationException {
        Files.createDirectories(folder);
        PrivateFile.close(folder);
        Files.deleteIfExists(folder.resolve(KEY));
        KeyPair pair = pair();
        Instant now = clock.instant();
        String made = LocalDate.ofInstant(now, ZoneOffset.UTC).toString();
        X500Name name = name(cut(yard) + " pages, root of " + made, yard);
        JcaX509v3CertificateBuilder root = builder(name, now.minus(LAG), now.plus(ROOT_LIFE), name, pair.getPublic());
        root.addExtension(Extension.basicConstraints, true, new BasicConstraints(0));
        root.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.keyCertSign | KeyUsage.cRLSign));
        root.addExtension(Extension.nameConstraints, true, reach.stated());
        root.addExtension(
                Extension.subjectKeyIdentifier,
                false,
                new JcaX509ExtensionUtils().createSubjectKeyIdentifier(pair.getPublic()));
        PrivateFile.write(folder.resolve(KEY), pem(pair.getPrivate()));
        SafeFile.write(folder.resolve(ROOT), pem(signed(root, pair.getPrivate())));
    }

    private static YardAuthority read(Path certificate, Path secret, Clock clock)
            throws IOException, GeneralSecurityException {
        X509CertificateHolder held = (X509CertificateHolder) parsed(certificate);
        X509Certificate root = new JcaX509CertificateConverter().getCertificate(held);
        PrivateKeyInfo info = (PrivateKeyInfo) parsed(secret);
        root.checkValidity(Date.from(clock.instant()));
        NameConstraints stated = NameConstraints.getInstance(
                held.getExtension(Extension.nameConstraints).getParsedValue());
        return new YardAuthority(root, new JcaPEMKeyConverter().getPrivateKey(info), Reach.of(stated), clock);
    }

    /** What stands in a file; something of another kind if it cannot be read. */
    private static Object parsed(Path file) throws IOException {
        try (PEMParser parser = new PEMParser(new StringReader(Files.readString(file)))) {
            return Objects.requireNonNullElse(parser.readObject(), "nothing");
        } catch (PEMException damaged) {
            return "damaged";
        }
    }

    /**
     * A new certificate for the pages, with a key of its own.
     *
     * @param names names and addresses they answer to; those the root does not vouch for are left out
     * @return the certificate
     */
    public PageCertificate issue(Set<String> names) {
        try {
            KeyPair pair = pair();
            Instant now = clock.instant();
            X500Name issuer =
                    X500Name.getInstance(root.getSubjectX500Principal().getEncoded());
            JcaX509v3CertificateBuilder page = builder(
                    issuer,
                    now.minus(LAG),
                    now.plus(PageCertificate.LIFE),
                    name("Sternwright pages", "Sternwright"),
                    pair.getPublic());
            page.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
            page.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature));
            page.addExtension(Extension.extendedKeyUsage, false, new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth));
            page.addExtension(Extension.subjectAlternativeName, false, alternatives(names));
            page.addExtension(
                    Extension.authorityKeyIdentifier,
                    false,
                    new JcaX509ExtensionUtils().createAuthorityKeyIdentifier(root));
            return new PageCertificate(pair.getPrivate(), signed(page, key), names);
        } catch (GeneralSecurityException | OperatorCreationException | IOException e) {
            throw new IllegalStateException("this Java cannot make a certificate", e);
        }
    }

    private GeneralNames alternatives(Set<String> names) {
        Set<String> held = new TreeSet<>();
        names.stream().filter(reach::holds).map(Reach::bare).forEach(held::add);
        return new GeneralNames(held.stream()
                .map(n -> new GeneralName(Reach.isAddress(n) ? GeneralName.iPAddress : GeneralName.dNSName, n))
                .toArray(GeneralName[]::new));
    }

    /**
     * Refuses names the yard asks for by name which the root does not vouch for.
     *
     * @param given the names
     * @throws BadInput naming the first of them
     */
    public void check(List<String> given) {
        for (String name : given) {
            if (!reach.holds(name)) {
                throw BadInput.of(
                        "--name",
                        "the yard's root certificate does not vouch for " + name,
                        "a name it was made with, or an address of a private network",
                        "Move the folder .desk/https away to make a new root; every phone has to be told to trust it again.");
            }
        }
    }

    /**
     * The root as phones take it.
     *
     * @return DER
     */
    public byte[] root() {
        return encoded(root);
    }

    /**
     * Last day of the root.
     *
     * @return the day, UTC
     */
    public LocalDate rootUntil() {
        return LocalDate.ofInstant(root.getNotAfter().toInstant(), ZoneOffset.UTC);
    }

    /**
     * By what a person knows the root again.
     *
     * @return SHA-256 of it, pairs of hexadecimal figures with colons
     */
    public String fingerprint() {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(root());
            return HexFormat.ofDelimiter(":").withUpperCase().formatHex(hash);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static JcaX509v3CertificateBuilder builder(
            X500Name issuer, Instant from, Instant to, X500Name subject, PublicKey publicKey) {
        BigInteger serial = new BigInteger(126, RANDOM).setBit(126);
        return new JcaX509v3CertificateBuilder(issuer, serial, Date.from(from), Date.from(to), subject, publicKey);
    }

    private static X509Certificate signed(X509v3CertificateBuilder builder, PrivateKey by)
            throws GeneralSecurityException, OperatorCreationException {
        return new JcaX509CertificateConverter()
                .getCertificate(builder.build(new JcaContentSignerBuilder(SIGNED).build(by)));
    }

    private static KeyPair pair() throws GeneralSecurityException {
        KeyPairGenerator keys = KeyPairGenerator.getInstance("EC");
        keys.initialize(new ECGenParameterSpec("secp256r1"), RANDOM);
        return keys.generateKeyPair();
    }

    private static X500Name name(String common, String organization) {
        return new X500NameBuilder(BCStyle.INSTANCE)
                .addRDN(BCStyle.O, cut(organization))
                .addRDN(BCStyle.CN, common)
                .build();
    }

    /** X.520 takes 64 signs for a name. */
    private static String cut(String text) {
        String plain = text.isBlank() ? "Sternwright" : text.strip();
        return plain.length() <= LONGEST_NAME
                ? plain
                : plain.substring(0, LONGEST_NAME).strip();
    }

    private static String pem(Object what) throws IOException {
        StringWriter text = new StringWriter();
        try (JcaPEMWriter writer = new JcaPEMWriter(text)) {
            writer.writeObject(what instanceof PrivateKey key ? new PemObject("PRIVATE KEY", key.getEncoded()) : what);
        }
        return text.toString();
    }

    private static byte[] encoded(X509Certificate certificate) {
        try {
            return certificate.getEncoded();
        } catch (CertificateEncodingException e) {
            throw new IllegalStateException("a certificate that was read can be written", e);
        }
    }
}
