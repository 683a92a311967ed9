package org.berrywatt.server.platform;

import io.swagger.v3.core.converter.ModelConverters;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.info.Info;
import org.springdoc.core.customizers.JavadocPropertyCustomizer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The head of the OpenAPI description that the server gives of itself at {@code /v3/api-docs}. */
@Configuration(proxyBeanMethods = false)
class ApiDescription {

    @Bean
    OpenAPI openApi(JavadocPropertyCustomizer javadoc) {
        ModelConverters.getInstance(true).addConverter(javadoc);
        return new OpenAPI()
                .info(new Info()
                        .title("Berrywatt")
                        .version("1")
                        .description("Lab days, teams, cells, light, readings, live leaderboard and findings. "
                                + "Creation is PUT with an id of the client's; refusals are problem details."));
    }
}
