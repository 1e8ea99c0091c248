/**
 * Expected refusals as data: what happened (`code`), where (`path`), said in a sentence that also says what to do.
 * Defects are not problems: they are thrown.
 */
export const PROBLEM_CODES = [
  "UNREADABLE_DATING",
  "UNKNOWN_TERM",
  "WRONG_KIND_OF_TERM",
  "UNKNOWN_PART",
  "UNKNOWN_CLAIM",
  "UNKNOWN_SOURCE",
  "UNKNOWN_EXAMINATION",
  "UNKNOWN_REVISION",
  "PART_OF_ITSELF",
  "DUPLICATE_ID",
  "TOGETHER_AND_SEPARATE",
  "UNCITED_CLAIM",
  "MISSING_LOCATOR",
  "EMPTY_LIST",
  "CYCLE_OF_BROADER_TERMS",
  "CYCLE_OF_EXCEPTIONS",
  "STALE_CHANGE",
  "CHANGED_MEANWHILE",
  "WRONG_FORMAT",
  "OTHER_VERSION",
  "DAMAGED_DUMP",
  "STORE_NOT_EMPTY",
  "STORE_FULL",
  "STORE_LOCKED",
  "STORE_CORRUPT",
  "STORE_UNREACHABLE",
  "TOO_LARGE",
  "UNREADABLE_FILE",
  "NOTHING_TO_UNDO",
  "IMPOSSIBLE_ODDS",
  "NOT_SIGNED_IN",
  "NOT_ALLOWED",
  "WRONG_STATE",
  "UNKNOWN_PROPOSAL",
  "SIGN_IN_REFUSED",
  "SECOND_STEP_NEEDED",
  "TRY_LATER",
  "WEAK_PASSWORD",
  "NAME_TAKEN",
  "LINK_USED_UP",
  "UNKNOWN_PERSON",
  "UNKNOWN_SESSION",
  "LAST_OWNER",
  "UNKNOWN_REPORT",
  "BROKEN_SEAL",
  "OTHER_HISTORY",
] as const;
export type ProblemCode = (typeof PROBLEM_CODES)[number];

export interface Problem {
  readonly problem: true;
  readonly code: ProblemCode;
  /** One sentence that says what is wrong, where, and what to do. */
  readonly message: string;
  /** Place in the input, e.g. `["parts", 3, "within"]`. */
  readonly path: readonly (string | number)[];
  /** What the input might have meant. */
  readonly instead?: string;
}

/** Makes a problem. */
export function problem(
  code: ProblemCode,
  message: string,
  path: readonly (string | number)[] = [],
  instead?: string,
): Problem {
  return { problem: true, code, message, path, ...(instead === undefined ? {} : { instead }) };
}

/** Tells a refusal from an answer. */
export function isProblem(value: unknown): value is Problem {
  return typeof value === "object" && value !== null && (value as { problem?: unknown }).problem === true;
}
