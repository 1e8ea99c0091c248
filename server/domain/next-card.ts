import type { Card, CardWrite } from "./card.ts";
import { type Problem, problem } from "./problem.ts";

/** The card that a write makes of the one that stands, nothing where it is taken away, or why it is refused. */
export function nextCard(standing: Card | undefined, write: CardWrite): Card | undefined | Problem {
  const { kind, id, expectedVersion, next } = write;
  const version = standing?.version ?? 0;
  if (version !== expectedVersion)
    return problem(
      "CHANGED_MEANWHILE",
      `The ${kind.replaceAll("-", " ")} ${id} was changed meanwhile: this change was made on version ${expectedVersion}, the newest is ${version}. Read it again and make the change anew.`,
      ["cards", kind, id],
    );
  return next === undefined ? undefined : { kind, id, version: version + 1, ...next };
}
