package sternwright.app.serve;

import java.io.IOException;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.cert.Certificate;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.autoconfigure.ssl.SslBundleRegistrar;
import org.springframework.boot.ssl.SslBundle;
import org.springframework.boot.ssl.SslBundleRegistry;
import org.springframework.boot.ssl.SslStoreBundle;
import sternwright.app.certificate.PageCertificate;
import sternwright.app.certificate.YardAuthority;

/**
 * The certificate the pages show, renewed by itself: before it grows old, and when the machine gets another name or address. Its key
 * is never on a disk.
 */
final class PageKeys implements SslBundleRegistrar, AutoCloseable {
    /** Name by which the web server asks for it. */
    static final String BUNDLE = "pages";

    private static final Logger LOG = LoggerFactory.getLogger(PageKeys.class);
    private static final long LOOK_EVERY_MINUTES = 10;

    /** The key store never leaves memory; the format asks for a word. */
    private static final String WORD = "in memory only";

    private final YardAuthority authority;
    private final Supplier<Set<String>> names;
    private final Clock clock;
    private final ScheduledExecutorService watch = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "certificate");
        thread.setDaemon(true);
        return thread;
    });

    @Nullable
    private SslBundleRegistry registry;

    private PageCertificate now;

    PageKeys(YardAuthority authority, Supplier<Set<String>> names, Clock clock) {
        this.authority = authority;
        this.names = names;
        this.clock = clock;
        this.now = authority.issue(names.get());
    }

    @Override
    public void registerBundles(SslBundleRegistry to) {
        registry = to;
        to.registerBundle(BUNDLE, bundle(now));
        watch.scheduleWithFixedDelay(this::renew, LOOK_EVERY_MINUTES, LOOK_EVERY_MINUTES, TimeUnit.MINUTES);
    }

    /** Makes another certificate if that is needed; open connections stay. */
    synchronized void renew() {
        try {
            Set<String> wanted = names.get();
            if (now.stale(clock.instant(), wanted)) {
                now = authority.issue(wanted);
                Objects.requireNonNull(registry).updateBundle(BUNDLE, bundle(now));
                LOG.info("the certificate of the pages was renewed");
            }
        } catch (RuntimeException e) {
            LOG.error("the certificate of the pages could not be renewed; it is tried again", e);
        }
    }

    private static SslBundle bundle(PageCertificate page) {
        try {
            KeyStore store = KeyStore.getInstance("PKCS12");
            store.load(null, null);
            store.setKeyEntry(BUNDLE, page.key(), WORD.toCharArray(), new Certificate[] {page.certificate()});
            return SslBundle.of(SslStoreBundle.of(store, WORD, null));
        } catch (GeneralSecurityException | IOException e) {
            throw new IllegalStateException("this Java keeps no keys", e);
        }
    }

    YardAuthority authority() {
        return authority;
    }

    LocalDate rootUntil() {
        return authority.rootUntil();
    }

    @Override
    public void close() {
        watch.shutdownNow();
    }
}
