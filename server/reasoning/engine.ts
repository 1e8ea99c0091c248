/** Name and version of the engine. The version moves whenever the same piece and neighbourhood may get another answer. */
export const ENGINE = "scribeline-engine/2";
