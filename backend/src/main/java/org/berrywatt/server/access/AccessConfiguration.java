package org.berrywatt.server.access;

import java.time.Duration;
import java.util.List;
import org.berrywatt.contract.ProblemCode;
import org.berrywatt.server.platform.EarlyAnswer;
import org.berrywatt.server.platform.Refusal;
import org.berrywatt.server.platform.ServedPages;
import org.springdoc.core.utils.SpringDocUtils;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.config.observation.SecurityObservationSettings;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import org.springframework.security.web.firewall.RequestRejectedHandler;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * Two chains: what a program of ours asks for carries a pass and a CSRF token, pages and pictures neither. Calculations need
 * no token: they change nothing and read no pass, so that there is nothing to forge. Nor do devices, whose door looks at no
 * cookie but at what a page of another server cannot send.
 */
@Configuration(proxyBeanMethods = false)
class AccessConfiguration implements WebMvcConfigurer {

    /** What no page of ours uses stays shut, also for whatever might be injected into one. */
    private static final String POWERS =
            "camera=(), microphone=(), geolocation=(), usb=(), serial=(), bluetooth=(), payment=()";

    /** For this server alone: what else a school runs under its name is not ours to lock (RFC 6797). */
    private static final Duration ONLY_TLS_FOR = Duration.ofDays(365);

    private final String contentPolicy;

    AccessConfiguration(ServedPages pages) {
        contentPolicy = ContentPolicy.of(pages.texts());
    }

    @Override
    public void addArgumentResolvers(List<HandlerMethodArgumentResolver> resolvers) {
        resolvers.add(new CallerArgument());
        SpringDocUtils.getConfig().addRequestWrapperToIgnore(Caller.class); // read from the pass, not asked for
    }

    @Bean
    @Order(1)
    SecurityFilterChain requests(HttpSecurity http, Passes passes, Journal journal, AccessProblems problems) {
        return plain(http)
                .securityMatcher("/api/**", "/live/**", "/actuator/**", "/v3/**")
                .csrf(csrf -> csrf.spa().ignoringRequestMatchers("/api/calculations/**", "/api/logger/**"))
                .addFilterBefore(new PassFilter(passes, journal), AuthorizationFilter.class)
                .authorizeHttpRequests(rules -> rules.requestMatchers("/actuator/health/**")
                        .permitAll()
                        .requestMatchers("/actuator/**")
                        .hasRole("TEACHER")
                        .anyRequest()
                        .permitAll())
                .exceptionHandling(
                        failed -> failed.accessDeniedHandler(problems).authenticationEntryPoint(problems))
                .build();
    }

    @Bean
    @Order(2)
    SecurityFilterChain pages(HttpSecurity http) {
        return plain(http)
                .csrf(AbstractHttpConfigurer::disable)
                .authorizeHttpRequests(rules -> rules.anyRequest().permitAll())
                .headers(headers -> headers.cacheControl(HeadersConfigurer.CacheControlConfig::disable))
                .build();
    }

    /** One observation for each request is enough; one for each filter that it passes costs more than the filters. */
    @Bean
    SecurityObservationSettings observedOnce() {
        return SecurityObservationSettings.noObservations();
    }

    /** No sessions, no log-out page, nothing to return to; the same headers for everything. */
    private HttpSecurity plain(HttpSecurity http) {
        return http.sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .logout(AbstractHttpConfigurer::disable)
                .requestCache(AbstractHttpConfigurer::disable)
                .headers(headers -> headers.contentSecurityPolicy(policy -> policy.policyDirectives(contentPolicy))
                        .referrerPolicy(policy -> policy.policy(ReferrerPolicy.NO_REFERRER))
                        .permissionsPolicyHeader(policy -> policy.policy(POWERS))
                        .httpStrictTransportSecurity(
                                strict -> strict.includeSubDomains(false).maxAgeInSeconds(ONLY_TLS_FOR.toSeconds())));
    }

    /** Addresses that are no plain paths, and headers with control characters. */
    @Bean
    RequestRejectedHandler oddRequests(EarlyAnswer early) {
        return (request, response, cause) ->
                early.refuse(request, response, Refusal.of(ProblemCode.REQUEST_UNREADABLE));
    }
}
