package org.berrywatt.server.access;

import java.util.List;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Two chains: what is asked for by a program of ours carries a pass and a CSRF token, pages and pictures neither. */
@Configuration(proxyBeanMethods = false)
class AccessConfiguration implements WebMvcConfigurer {

    @Override
    public void addArgumentResolvers(List<HandlerMethodArgumentResolver> resolvers) {
        resolvers.add(new CallerArgument());
    }

    @Bean
    @Order(1)
    SecurityFilterChain requests(HttpSecurity http, Passes passes, AccessProblems problems) {
        return http.securityMatcher("/api/**", "/live/**", "/actuator/**", "/v3/**")
                .csrf(csrf -> csrf.spa())
                .addFilterBefore(new PassFilter(passes), AuthorizationFilter.class)
                .authorizeHttpRequests(rules -> rules.requestMatchers("/actuator/health/**")
                        .permitAll()
                        .requestMatchers("/actuator/**")
                        .hasRole("TEACHER")
                        .anyRequest()
                        .permitAll())
                .exceptionHandling(
                        failed -> failed.accessDeniedHandler(problems).authenticationEntryPoint(problems))
                .sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .logout(AbstractHttpConfigurer::disable)
                .requestCache(AbstractHttpConfigurer::disable)
                .build();
    }

    @Bean
    @Order(2)
    SecurityFilterChain pages(HttpSecurity http) {
        return http.csrf(AbstractHttpConfigurer::disable)
                .sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .authorizeHttpRequests(rules -> rules.anyRequest().permitAll())
                .logout(AbstractHttpConfigurer::disable)
                .requestCache(AbstractHttpConfigurer::disable)
                .headers(headers -> headers.cacheControl(cache -> cache.disable()))
                .build();
    }
}
