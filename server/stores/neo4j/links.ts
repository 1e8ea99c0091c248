import { KINDS, type Kind, type VersionRow } from "./version-row.ts";

export type Link = "broader" | "leads" | "states" | "proposes" | "needs" | "names" | "excepts" | "cites";

/** How what a version names lies in the database: as relationships of one type. */
interface Laid {
  readonly type: string;
  /** Between the version and the nodes that stay of this kind. */
  readonly to: Kind;
  /** Of which kind of thing the version is. */
  readonly of: readonly Kind[];
  /** Whether it leads from what is named to the version, and not the other way round. */
  readonly isToVersion?: boolean;
  /** What is told on the relationship. */
  readonly properties?: readonly string[];
}

export const LINKS: Readonly<Record<Link, Laid>> = {
  broader: { type: "BROADER", to: "term", of: ["term"] },
  leads: { type: "LEADS", to: "term", of: ["claim"], isToVersion: true },
  states: { type: "STATES", to: "term", of: ["claim"], isToVersion: true },
  proposes: { type: "PROPOSES", to: "term", of: ["claim"], isToVersion: true },
  needs: { type: "NEEDS", to: "term", of: ["claim"] },
  names: { type: "NAMES", to: "term", of: KINDS },
  excepts: { type: "EXCEPTS", to: "claim", of: ["claim"] },
  cites: { type: "CITES", to: "source", of: ["claim"], properties: ["place", "locator", "note"] },
};

/** The links that a version of a kind can have. */
export const linksOf = (kind: Kind): readonly Link[] =>
  (Object.keys(LINKS) as Link[]).filter((link) => LINKS[link].of.includes(kind));

/** What a version leads to by a link: ids, and what is told on the relationship. */
export const namedBy = (
  row: VersionRow,
  link: Link,
): readonly { readonly id: string; readonly told: object }[] =>
  link === "cites"
    ? row.cites.map(({ source, ...told }) => ({ id: source, told }))
    : row[link].map((id) => ({ id, told: NOTHING }));

const NOTHING: object = {};
