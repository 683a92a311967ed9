/** Tests in real browsers. */
package org.berrywatt.server.browser;
