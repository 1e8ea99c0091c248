import { type Problem, problem } from "../domain/problem.ts";

/** The disk, a quota, or a limit on files. */
const FULL = ["ENOSPC", "EDQUOT", "EFBIG"];

/** What a failure of a file system means for who keeps backups; `undefined` if it is something else. */
export function findDiskProblem(failure: unknown, folder: string): Problem | undefined {
  const { code, message } = failure as { readonly code?: unknown; readonly message?: unknown };
  if (typeof code !== "string") return undefined;
  if (FULL.includes(code))
    return problem(
      "STORE_FULL",
      `The disk of ${folder} is full or a limit was reached (${message}); no backup was made, and the earlier ones stay. Make room.`,
    );
  if (!/^E[A-Z]+$/.test(code)) return undefined;
  return problem(
    "UNREADABLE_FILE",
    `The folder ${folder} cannot be used for backups (${message}); check its permissions, or name another.`,
  );
}
