package org.berrywatt.server.calculator;

import org.springframework.context.annotation.Configuration;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Puts the allowance before every door of the calculator. */
@Configuration(proxyBeanMethods = false)
class CalculatorConfiguration implements WebMvcConfigurer {

    private final Allowance allowance;

    CalculatorConfiguration(Allowance allowance) {
        this.allowance = allowance;
    }

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(allowance).addPathPatterns("/api/calculations/**");
    }
}
