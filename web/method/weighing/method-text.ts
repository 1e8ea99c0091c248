import type { Section } from "./block.ts";
import { ofItsLimits } from "./of-its-limits.ts";
import { ofTheAnswers } from "./of-the-answers.ts";
import { ofTheModel } from "./of-the-model.ts";

export const METHOD_TITLE = "How probabilities are weighed";

/** The method, in the order of the page and of docs/method.md. Its tables are read from what the engine assumes. */
export const METHOD: readonly Section[] = [...ofTheModel, ...ofTheAnswers, ...ofItsLimits];
