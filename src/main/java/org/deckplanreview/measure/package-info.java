/** Values with their units, the words and flags that stand beside them, and how they are written for people. Uses no other package of the project. */
package org.deckplanreview.measure;
