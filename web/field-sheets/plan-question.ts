/** For what a plan is drawn up, as it stands in the address: an attribution, or a piece with its own. */
export interface PlanQuestion {
  readonly form: string | null;
  readonly region: string | null;
  /** EDTF; empty if none is claimed. */
  readonly date: string | null;
  readonly piece: string | null;
}

export const readPlanQuestion = (params: URLSearchParams): PlanQuestion => ({
  form: params.get("form") || null,
  region: params.get("region") || null,
  date: params.get("date") || null,
  piece: params.get("piece") || null,
});

/** The same as parameters of an address; what is not said is left out. */
export const writePlanQuestion = (question: Partial<PlanQuestion>): URLSearchParams =>
  new URLSearchParams(
    Object.entries(question).flatMap(([name, value]) => (value ? [[name, value] as [string, string]] : [])),
  );

/** The address of a plan. */
export const addressOfPlan = (question: Partial<PlanQuestion>): string =>
  `/plan?${writePlanQuestion(question)}`;
