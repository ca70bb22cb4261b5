/** Seams may differ by so much of the longer edge where nothing is said: it is eased in unseen (common practice, no source). */
export const SEAM_WITHIN = 0.02;
