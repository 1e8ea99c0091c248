/** Gives eight letters and digits that were not given before (random, lower case). */
export type NewSuffix = () => string;
