package org.berrywatt.server.platform;

import java.time.Clock;
import java.time.ZoneOffset;
import java.util.stream.Stream;
import org.springframework.beans.factory.config.BeanDefinition;
import org.springframework.beans.factory.config.BeanFactoryPostProcessor;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The one clock of the server, so that tests may hold it, its texts and its pages. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(BerrywattSettings.class)
class PlatformConfiguration {

    @Bean
    Clock clock() {
        return Clock.tickMillis(ZoneOffset.UTC);
    }

    @Bean
    Texts texts() {
        return Texts.load();
    }

    @Bean
    ServedPages servedPages() {
        return ServedPages.load();
    }

    /** Nobody reads the API description on a lab day; it is made when somebody asks for it. */
    @Bean
    static BeanFactoryPostProcessor apiDescriptionWhenAskedFor() {
        return factory -> Stream.of(factory.getBeanDefinitionNames())
                .map(factory::getBeanDefinition)
                .filter(PlatformConfiguration::describesTheApi)
                .forEach(bean -> bean.setLazyInit(true));
    }

    private static boolean describesTheApi(BeanDefinition bean) {
        return Stream.of(bean.getBeanClassName(), bean.getFactoryBeanName())
                .anyMatch(name -> name != null && name.startsWith("org.springdoc."));
    }
}
