import type { Claim, Relation } from "../../claim.ts";
import type { Dating } from "../../dating.ts";
import { type Draft, isDraft, isId, listOf } from "../../draft.ts";
import { foldName } from "../../fold-name.ts";
import type { TermId } from "../../ids.ts";
import { isProblem } from "../../problem.ts";
import { readDating } from "../../read-dating.ts";
import { type Broader, isWithin } from "../../region.ts";
import { roleOfRelation } from "../../role-of-relation.ts";
import type { Alike } from "./alike.ts";

/**
 * Claims that may say what a claim says that is still being written: of the same subject and relation, with ends that overlap,
 * in regions one of which lies within the other; or out of the same place of the same source. What the draft does not say
 * yet stands for anything.
 */
export function findAlikeClaims(
  draft: Draft,
  standing: readonly Claim[],
  broader: Broader,
): readonly Alike[] {
  const others = standing.filter((claim) => claim.id !== draft["id"] && claim.status !== "rejected");
  const same = others.filter((claim) => saysTheSame(draft, claim, broader));
  const fromThere = others.filter((claim) => !same.includes(claim) && citesSamePlace(draft, claim));
  return [
    ...same.map(({ id }): Alike => ({ kind: "claim", id, by: "same claim" })),
    ...fromThere.map(({ id }): Alike => ({ kind: "claim", id, by: "same source and place" })),
  ];
}

function saysTheSame(draft: Draft, claim: Claim, broader: Broader): boolean {
  if (draft["relation"] !== claim.relation) return false;
  if (claim.relation === "void when")
    return draft["of"] === claim.of && draft["condition"] === claim.condition;
  return (
    isId(draft["subject"]) &&
    draft["subject"] === claim.subject &&
    endsMeet(draft, claim) &&
    regionsMeet(draft, claim, broader)
  );
}

/** Whether both lead to the same: terms, regions or states that they share, or years that both can mean. */
function endsMeet(draft: Draft, claim: Claim): boolean {
  const [mine, theirs] = [endsOf(draft), endsOf(claim as unknown as Draft)];
  if (mine !== undefined && theirs !== undefined && !mine.some((end) => theirs.includes(end))) return false;
  const [own, other] = [datingOf(draft), datingOf(claim as unknown as Draft)];
  if (own === undefined || other === undefined) return true;
  return reach(own)[0] <= reach(other)[1] && reach(other)[0] <= reach(own)[1];
}

const reach = ({ begin, end }: Dating): readonly [number, number] => [begin[0], end[1]];

function endsOf(draft: Draft): readonly string[] | undefined {
  if (isId(draft["object"])) return [draft["object"]];
  if (isId(draft["from"]) && isId(draft["to"])) return [`${draft["from"]} ${draft["to"]}`];
  const lists = ["ways", "regions", "states"].map((name) => listOf(draft[name]));
  const list = lists.find((one) => one !== undefined);
  return list?.flat().filter((end) => typeof end === "string");
}

function datingOf(draft: Draft): Dating | undefined {
  const when = draft["when"];
  if (typeof when !== "string") return undefined;
  const dating = readDating(when, roleOfRelation(draft["relation"] as Relation));
  return isProblem(dating) ? undefined : dating;
}

function regionsMeet(draft: Draft, claim: Claim, broader: Broader): boolean {
  const mine = isDraft(draft["scope"]) ? draft["scope"]["region"] : undefined;
  const theirs = "scope" in claim ? claim.scope.region : undefined;
  if (!isId(mine) || theirs === undefined) return true;
  return isWithin(mine as TermId, theirs, broader) || isWithin(theirs, mine as TermId, broader);
}

function citesSamePlace(draft: Draft, claim: Claim): boolean {
  return (listOf(draft["citations"]) ?? []).some(
    (cited) =>
      isDraft(cited) &&
      isId(cited["source"]) &&
      foldName(cited["locator"]) !== "" &&
      claim.citations.some(
        (other) =>
          other.basis === "published" &&
          other.source === cited["source"] &&
          foldName(other.locator) === foldName(cited["locator"]),
      ),
  );
}
