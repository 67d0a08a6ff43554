/**
 * Durability of timber: the use class that treatment or natural durability reaches. Front door: {@link
 * org.deckplanreview.method.durability.Durability}.
 */
package org.deckplanreview.method.durability;
