import { cardKeyNodes, cardNode } from "../cards.ts";
import type { Content } from "../content.ts";
import { LINKS, linksOf, namedBy } from "../links.ts";
import { STILL_STANDS } from "../migrations.ts";
import { newestNodes, partsOf, revisionNode, versionNodesOf } from "../nodes-of-content.ts";
import { KINDS, type Kind, LABELS, type VersionRow } from "../version-row.ts";
import type { Ending } from "../write-planned.ts";
import { propertiesOf } from "../writes.ts";
import type { BulkFiles } from "./bulk-files.ts";

/** Lays out in files what the writes of a store lay into a database: the same nodes, relationships and properties. */
export interface GraphLaid {
  /** Adds a content, whose changes come after those of all before it. */
  add(content: Content): void;
  /** Adds what ends a write. `key` is what the write is called by. */
  end(ending: Omit<Ending<unknown>, "answer" | "revision">, key: string): void;
}

/** So many signs has an `until` in its file, so that it can be written over when the version ends. */
const SIGNS_OF_UNTIL = String(STILL_STANDS).length;

/** Begins to lay a graph out for the store of a name. */
export function layGraph(files: BulkFiles, store: string): GraphLaid {
  const named = { store };
  const numbers: Readonly<Record<Kind, Map<string, number>>> = {
    term: new Map(),
    claim: new Map(),
    source: new Map(),
  };
  /** Where the `until` of the version that stands lies, by the number of the node that stays. */
  const untils: number[] = [];

  const numberOf = (kind: Kind, id: string): number => {
    const known = numbers[kind].get(id);
    if (known !== undefined) return known;
    const { number } = files.node(LABELS[kind], named, { id });
    numbers[kind].set(id, number);
    return number;
  };
  const addVersion = (kind: Kind, row: VersionRow): void => {
    const thing = numberOf(kind, row.id);
    const { until } = row.properties;
    const version = files.node(`${LABELS[kind]}Version`, { until }, named, { id: row.id }, row.properties);
    if (until === STILL_STANDS) untils[thing] = version.place;
    files.relationship("OF", version.number, thing);
    for (const link of linksOf(kind))
      for (const { id, told } of namedBy(row, link)) {
        const { type, to, isToVersion } = LINKS[link];
        const other = numberOf(to, id);
        if (isToVersion) files.relationship(type, other, version.number, told);
        else files.relationship(type, version.number, other, told);
      }
  };
  const addAll = (label: string, nodes: readonly object[]): void => {
    for (const node of nodes) files.node(label, named, node);
  };

  return {
    add: ({ ends, rows, revisions }) => {
      for (const { kind, ids, until } of ends)
        for (const id of ids)
          files.patch(
            `${LABELS[kind]}Version`,
            untils[numberOf(kind, id)] as number,
            String(until).padStart(SIGNS_OF_UNTIL, "0"),
          );
      for (const kind of KINDS) for (const row of rows[kind]) addVersion(kind, row);
      addAll("ChangePart", partsOf(revisions));
      addAll("Revision", revisions.map(revisionNode));
    },
    end: ({ examinations, lines, cards }, key) => {
      addAll("ExaminationVersion", examinations.map(versionNodesOf(lines)));
      addAll("Examination", newestNodes(examinations));
      const put = [...cards.puts.values()].flatMap(({ card }) => card ?? []);
      addAll("Card", put.map(cardNode));
      addAll("CardKey", put.flatMap(cardKeyNodes));
      const last = lines.length - 1;
      addAll(
        "Write",
        lines.map((line, at) => ({ ...propertiesOf(line), ...(at === last ? { key } : {}) })),
      );
    },
  };
}
