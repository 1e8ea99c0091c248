import { FOLLOW_CARD, followId, followWrite, MOST_FOLLOWED } from "../../domain/chronicle/follow.ts";
import { ID_PATTERN, id as idOf } from "../../domain/ids.ts";
import { kindOfId } from "../../domain/kind-of-id.ts";
import { isProblem, type Problem, problem } from "../../domain/problem.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller, signed } from "../acting.ts";
import { isRefusal, type Refusal } from "../refusal.ts";
import { findOpenExamination } from "./find-open-examination.ts";

type Ports = Acting & { readonly store: Store };

/** Whether the caller follows something now. */
export interface Following {
  readonly about: string;
  readonly isFollowed: boolean;
}

/** Follows a term, a region, a source or an examination from the newest revision on; what is followed already stays so. */
export async function followThing(ports: Ports, about: string): Promise<Following | Refusal> {
  const refusal = refuseCaller(ports, "follow something");
  if (refusal) return refusal;
  const unknown = await findUnknown(ports, about);
  if (unknown !== undefined) return { refused: [unknown] };
  const { store } = ports;
  const along = signed(ports, "follow");
  const { by, at } = along.deed;
  if ((await store.card(FOLLOW_CARD, followId(by, about))) !== undefined) return { about, isFollowed: true };
  const followed = await store.listCards({ kind: FOLLOW_CARD, key: { name: "by", value: by } }, { first: 1 });
  if (followed.total >= MOST_FOLLOWED)
    return {
      refused: [
        problem(
          "TOO_LARGE",
          `You follow ${MOST_FOLLOWED} things already; leave some before you follow more.`,
        ),
      ],
    };
  const since = (await store.newestRevision())?.number ?? 0;
  const written = await store.writeCards({ ...along, cards: [followWrite({ by, about, since, at })] });
  if (isProblem(written) && written.code !== "CHANGED_MEANWHILE") return { refused: [written] };
  return { about, isFollowed: true };
}

/** Does not follow something any more. */
export async function unfollowThing(ports: Ports, about: string): Promise<Following | Refusal> {
  const refusal = refuseCaller(ports, "follow something");
  if (refusal) return refusal;
  const along = signed(ports, "unfollow");
  const id = followId(along.deed.by, about);
  const card = await ports.store.card(FOLLOW_CARD, id);
  if (card === undefined) return { about, isFollowed: false };
  const cards = [{ kind: FOLLOW_CARD, id, expectedVersion: card.version }];
  const written = await ports.store.writeCards({ ...along, cards });
  return isProblem(written) ? { refused: [written] } : { about, isFollowed: false };
}

/** Whether the caller follows something. */
export async function findFollowing(ports: Ports, about: string): Promise<Following | Refusal> {
  const refusal = refuseCaller(ports, "follow something");
  if (refusal) return refusal;
  const card = await ports.store.card(FOLLOW_CARD, followId(ports.caller?.id ?? "", about));
  return { about, isFollowed: card !== undefined };
}

async function findUnknown(ports: Ports, about: string): Promise<Problem | undefined> {
  const kind = kindOfId(about);
  if (kind === "claim" || !ID_PATTERN.test(about))
    return problem("UNKNOWN_TERM", "Only terms, regions, sources and examinations can be followed.", [
      "about",
    ]);
  if (kind === undefined) {
    const examination = await findOpenExamination(ports, idOf(about));
    return isRefusal(examination) ? examination.refused[0] : undefined;
  }
  const found =
    kind === "term" ? await ports.store.terms([idOf(about)]) : await ports.store.sources([idOf(about)]);
  if (found.size > 0) return undefined;
  return problem(kind === "term" ? "UNKNOWN_TERM" : "UNKNOWN_SOURCE", `There is no ${kind} ${about}.`, [
    "about",
  ]);
}
