import type { Caller } from "../../domain/people/caller.ts";
import { limitRuns } from "../../ports/limit-runs.ts";

/** What reads much, or compares it. */
const MUCH: readonly string[] = [
  ...["difference", "give", "take", "digest", "examine-again", "sign-report", "check-checkpoint", "feed"],
];
/** How many of these run at once and wait, of all and of one person: nobody takes the whole server by asking for them. */
const OF_ALL = [4, 40] as const;
const OF_ONE = [2, 10] as const;

interface Own {
  readonly inTurn: ReturnType<typeof limitRuns>;
  asked: number;
}

/** A line for what reads much, in which each person has a line of their own; where it is too long, that is said. */
export function lineUp() {
  const inTurn = limitRuns(...OF_ALL);
  const lines = new Map<string, Own>();
  return async <Answer>(
    action: string,
    { id }: Pick<Caller, "id">,
    run: () => Promise<Answer>,
  ): Promise<Answer | "busy"> => {
    if (!MUCH.includes(action)) return run();
    const own = lines.get(id) ?? { inTurn: limitRuns(...OF_ONE), asked: 0 };
    lines.set(id, own);
    own.asked++;
    try {
      return await own.inTurn(() => inTurn(run));
    } finally {
      own.asked--;
      if (own.asked === 0) lines.delete(id);
    }
  };
}
