import weighingSchema from "../../docs/formats/weighing.schema.json" with { type: "json" };
import type { Problem } from "../domain/problem.ts";
import type { Weighing } from "../domain/weighing/weighing.ts";
import { readBySchema } from "./read-by-schema.ts";

/** Reads a weighing of the format docs/formats/weighing.schema.json, or says what is wrong with it, place by place. */
export const readWeighing: (value: unknown) => Weighing | readonly Problem[] =
  readBySchema<Weighing>(weighingSchema);
