/** The service over HTTP: resources, and problems in the form of RFC 9457. */
package org.deckplanreview.api;
