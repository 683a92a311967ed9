package org.berrywatt.server.platform;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Takes what went wrong before or beside the controllers, in filters and in the web server, to the same answer. */
@RestController
class FailedElsewhere implements ErrorController {

    @RequestMapping("/error")
    void refuse(HttpServletRequest request) throws Exception {
        if (request.getAttribute(RequestDispatcher.ERROR_EXCEPTION) instanceof Exception below
                && DatabaseFailure.of(below).isPresent()) {
            throw below; // a filter asks the database, too: who is it that calls?
        }
        throw Unreadable.refusal(status(request));
    }

    /** Somebody who asks for this address itself finds nothing here. */
    private static int status(HttpServletRequest request) {
        return request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE) instanceof Integer status ? status : 404;
    }
}
