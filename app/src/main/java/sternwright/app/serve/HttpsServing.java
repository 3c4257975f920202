package sternwright.app.serve;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Objects;
import org.apache.catalina.connector.Connector;
import org.apache.coyote.AbstractProtocol;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnProperty;
import org.springframework.boot.tomcat.TomcatWebServer;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.ApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import sternwright.app.web.access.OwnHttps;

/** What the pages need beside the rest when they have their own https: a plain door for phones, and what pages tell of the root. */
@Configuration(proxyBeanMethods = false)
@ConditionalOnProperty("sternwright.https.plain-port")
class HttpsServing {
    @Bean
    static WebServerFactoryCustomizer<TomcatServletWebServerFactory> plainConnector(
            @Value("${sternwright.https.plain-port}") int port, @Value("${server.address}") InetAddress address) {
        return factory -> {
            Connector plain = new Connector("HTTP/1.1");
            plain.setPort(port);
            if (plain.getProtocolHandler() instanceof AbstractProtocol<?> protocol) {
                protocol.setAddress(address);
            }
            factory.addAdditionalConnectors(plain);
        };
    }

    @Bean
    static OwnHttps ownHttps(PageKeys keys, ApplicationContext context, @Value("${server.address}") String address)
            throws UnknownHostException {
        return new Own(keys, (WebServerApplicationContext) context, host(address));
    }

    /** The host that stands in addresses for phones: an address rather than a name, for no phone has to look it up. */
    static String host(String address) {
        String first = address.equals("0.0.0.0") || address.equals("::") ? LocalNames.first() : address;
        return first.contains(":") && !first.startsWith("[") ? "[" + first + "]" : first;
    }

    private record Own(PageKeys keys, WebServerApplicationContext context, String host) implements OwnHttps {
        @Override
        public String fingerprint() {
            return keys.authority().fingerprint();
        }

        @Override
        public byte[] root() {
            return keys.authority().root();
        }

        @Override
        public LocalDate rootUntil() {
            return keys.rootUntil();
        }

        @Override
        public String plainAddress() {
            return "http://" + host + ":" + port(false) + "/phone";
        }

        @Override
        public String secureAddress() {
            return "https://" + host + ":" + port(true) + "/";
        }

        @Override
        public int securePort() {
            return port(true);
        }

        private int port(boolean secure) {
            TomcatWebServer server = (TomcatWebServer) Objects.requireNonNull(context.getWebServer());
            return Arrays.stream(server.getTomcat().getService().findConnectors())
                    .filter(c -> c.getSecure() == secure)
                    .mapToInt(Connector::getLocalPort)
                    .findFirst()
                    .orElseThrow();
        }
    }
}
