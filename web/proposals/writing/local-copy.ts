import { isDraft } from "#server/domain/draft.ts";
import { isProblem } from "#server/domain/problem.ts";
import { type FormFields, readFormFields } from "#server/domain/proposals/form/form-fields.ts";

/** What stands in a form, with what it is called and why. */
export interface Written {
  readonly fields: FormFields;
  readonly title: string;
  readonly why: string;
}
/** The same, kept on the machine because the server could not be reached. `version` is that of the draft it was made on; 0 is a new one. */
export interface LocalCopy extends Written {
  readonly version: number;
}

const keyOf = (of: string): string => `scribeline.writing.${of}`;

/** What was kept on this machine of a draft, or of a new proposal of a kind. A browser without a store has none. */
export function readLocalCopy(of: string): LocalCopy | undefined {
  try {
    const copy: unknown = JSON.parse(localStorage.getItem(keyOf(of)) ?? "null");
    if (!isDraft(copy)) return undefined;
    const fields = readFormFields(copy["fields"]);
    const { title, why, version } = copy;
    if (isProblem(fields) || typeof title !== "string" || typeof why !== "string") return undefined;
    return { fields, title, why, version: typeof version === "number" ? version : 0 };
  } catch {
    return undefined;
  }
}

/** Keeps a copy on this machine, or drops it; whether it could be kept. */
export function keepLocalCopy(of: string, copy: LocalCopy | undefined): boolean {
  try {
    if (copy === undefined) localStorage.removeItem(keyOf(of));
    else localStorage.setItem(keyOf(of), JSON.stringify(copy));
    return true;
  } catch {
    return false;
  }
}
