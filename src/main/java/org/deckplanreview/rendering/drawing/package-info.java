/**
 * Drawings of a reviewed deck as SVG: a dimensioned plan, sections, and diagrams of the members in bending. Line types after
 * ISO 128-2, dimensioning after ISO 129-1, sheets after ISO 5457, title block after ISO 7200, scales after ISO 5455 (all from
 * memory). May use the report and what it is made of.
 */
package org.deckplanreview.rendering.drawing;
