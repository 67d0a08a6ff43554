package org.deckplanreview.report;

import org.deckplanreview.kernel.Pointer;
import org.deckplanreview.submission.SubjectKind;

/** A part of the submission that findings may speak of; its number is its place in the report's list, from 0. */
public record NumberedSubject(SubjectKind kind, String label, Pointer pointer) {}
