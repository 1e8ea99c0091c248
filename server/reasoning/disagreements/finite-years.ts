import type { Year } from "../../domain/years.ts";

/** The years of a finding; left out where an end is open and nothing can be counted. */
export const finiteYears = (years: Year): { readonly years?: Year } =>
  Number.isFinite(years) ? { years } : {};
