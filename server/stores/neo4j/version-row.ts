import type { Edit } from "../../domain/change.ts";
import type { Claim } from "../../domain/claim.ts";
import type { Standing } from "../../domain/graph-view.ts";
import { namesOf } from "../../domain/names-of.ts";

export type Kind = Edit["kind"];
/** The label of the node that stays; that of its versions ends in `Version`. */
export const LABELS: Readonly<Record<Kind, "Term" | "Claim" | "Source">> = {
  term: "Term",
  claim: "Claim",
  source: "Source",
};
export const KINDS = Object.keys(LABELS) as readonly Kind[];

/** A citation of a published source, by its place among the citations of the claim. */
export interface Cites {
  readonly source: string;
  readonly place: number;
  readonly locator: string;
  readonly note?: string;
}

/** One way a thing stood, as it lies in the database: properties, and the ids that its relationships lead to. */
export interface VersionRow {
  readonly id: string;
  readonly properties: Readonly<Record<string, string | number | boolean>>;
  readonly broader: readonly string[];
  readonly leads: readonly string[];
  readonly states: readonly string[];
  readonly proposes: readonly string[];
  readonly needs: readonly string[];
  readonly excepts: readonly string[];
  readonly names: readonly string[];
  readonly cites: readonly Cites[];
}

/** The row of a thing that stands from revision `since`; `body` is its canonical JSON. */
export function versionRow(standing: Standing, since: number, until: number, body: string): VersionRow {
  const { kind, thing } = standing;
  const properties = { since, until, body };
  const broader = kind === "term" && thing.broader !== undefined ? [thing.broader] : [];
  const roles = kind === "claim" ? rolesOf(thing) : NO_ROLES;
  const named = namesOf(standing).flatMap((name) => (name.kind === "term" ? [name.id] : []));
  const known = new Set<string>([
    ...broader,
    ...roles.leads,
    ...roles.states,
    ...roles.proposes,
    ...roles.needs,
  ]);
  return {
    id: thing.id,
    properties: {
      ...properties,
      ...(kind === "term" ? { kind: thing.kind } : {}),
      ...(kind === "claim" ? ofClaim(thing) : {}),
    },
    broader,
    ...roles,
    names: [...new Set(named)].filter((name) => !known.has(name)),
  };
}

type Roles = Pick<VersionRow, "leads" | "states" | "proposes" | "needs" | "excepts" | "cites">;
const NO_ROLES: Roles = { leads: [], states: [], proposes: [], needs: [], excepts: [], cites: [] };

function rolesOf(claim: Claim): Roles {
  const subject = "subject" in claim ? [claim.subject] : [];
  const role = claim.status !== "accepted" ? "proposes" : claim.relation === "requires" ? "leads" : "states";
  return {
    ...NO_ROLES,
    [role]: subject,
    needs: claim.relation === "requires" ? [...new Set(claim.ways.flat())] : [],
    excepts: claim.relation === "void when" ? [claim.of] : [],
    cites: claim.citations.flatMap((citation, place): readonly Cites[] =>
      citation.basis === "published"
        ? [
            {
              source: citation.source,
              place,
              locator: citation.locator,
              ...(citation.note === undefined ? {} : { note: citation.note }),
            },
          ]
        : [],
    ),
  };
}

const ofClaim = (claim: Claim): VersionRow["properties"] => ({
  relation: claim.relation,
  accepted: claim.status === "accepted",
  ...("subject" in claim ? { subject: claim.subject } : {}),
  ...("scope" in claim && claim.scope.region !== undefined ? { region: claim.scope.region } : {}),
});
