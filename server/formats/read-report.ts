import reportSchema from "../../docs/formats/report.schema.json" with { type: "json" };
import type { Problem } from "../domain/problem.ts";
import type { Report } from "../domain/report.ts";
import { readBySchema } from "./read-by-schema.ts";

/** Reads a report of the format docs/formats/report.schema.json, or says what is wrong with it, place by place. */
export const readReport: (value: unknown) => Report | readonly Problem[] = readBySchema<Report>(reportSchema);
