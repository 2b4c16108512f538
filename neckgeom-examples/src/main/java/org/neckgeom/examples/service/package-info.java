/**
 * A service that embeds the library: necks and trial cuts in, plans and decisions out, over HTTP on this machine.
 *
 * <p>{@link org.neckgeom.examples.service.NeckService} answers requests, {@link org.neckgeom.examples.service.NeckStore} keeps
 * what was given in one SQLite file. What is sent and what is kept is the JSON that the library itself reads and writes; the
 * service has no mapping of its own.
 */
package org.neckgeom.examples.service;
