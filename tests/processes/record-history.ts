import { askServer } from "#tests/support/server-process.ts";

const READ = `query ($id: ID!) { examination(id: $id) { version piece { title examined
  attribution { claimed: date } parts { id label } } } }`;
const ADD = `mutation ($id: ID!, $on: Int!, $piece: PieceInput!) {
  changeExamination(id: $id, expectedVersion: $on, piece: $piece) {
    ... on ExaminationChanged { examination { version } } ... on Refused { problems { code } } } }`;

interface Seen {
  readonly version: number;
  readonly parts: readonly string[];
}

/** What one client saw and did, in its order. */
export interface Recorded {
  /** Parts that it added and that were acknowledged. */
  readonly added: readonly string[];
  /** Every reading, with how many of its own parts it had been told of by then. */
  readonly readings: readonly (Seen & { readonly ownBefore: number })[];
  /** Codes of what was refused. */
  readonly refused: readonly string[];
}

/**
 * Several clients, spread over servers of one store, add parts to one examination at the same time, each on the version it
 * read last, and write down what they were told.
 */
export async function recordHistory(
  urls: readonly string[],
  id: string,
  { clients, changes }: { readonly clients: number; readonly changes: number },
): Promise<readonly Recorded[]> {
  const one = async (client: number): Promise<Recorded> => {
    const added: string[] = [];
    const readings: (Seen & { ownBefore: number })[] = [];
    const refused: string[] = [];
    let known: number | undefined;
    for (let n = 0; added.length < changes && n < changes * 10; n++) {
      // From one server to the other and back, as behind a proxy.
      const url = urls[(client + n) % urls.length] ?? "";
      const read = await askServer(url, READ, { id }, known);
      const { version, piece } = read.data.examination;
      const parts = piece.parts.map((part: { readonly id: string }) => part.id);
      readings.push({ version, parts, ownBefore: added.length });
      const part = `c${client}-${added.length}`;
      const changed = {
        title: piece.title,
        examined: piece.examined,
        attribution: { date: piece.attribution.claimed },
        parts: [...piece.parts, { id: part, label: `Part ${part}` }],
        observations: [],
      };
      const told = await askServer(url, ADD, { id, on: version, piece: changed }, read.sequence);
      known = told.sequence;
      const { problems } = told.data.changeExamination;
      if (problems === undefined) added.push(part);
      else refused.push(...problems.map(({ code }: { readonly code: string }) => code));
    }
    return { added, readings, refused };
  };
  return Promise.all(Array.from({ length: clients }, (_, client) => one(client)));
}

/**
 * What a recorded history has that no order of its changes one after the other explains: an acknowledged part that is gone
 * or twice, a version that read otherwise at another time, a reading without what its reader was told before.
 */
export function faultsIn(history: readonly Recorded[], last: Seen): readonly string[] {
  const faults: string[] = [];
  const stood = new Map<number, string>();
  const same = ({ version, parts }: Seen): void => {
    const text = parts.join(" ");
    const before = stood.get(version) ?? text;
    if (before !== text) faults.push(`version ${version} read as ${before}, then as ${text}`);
    stood.set(version, text);
  };
  for (const [client, { added, readings }] of history.entries()) {
    for (const part of added)
      if (last.parts.filter((each) => each === part).length !== 1) faults.push(`${part} is not there once`);
    let newest = 0;
    for (const reading of readings) {
      same(reading);
      if (reading.version < newest) faults.push(`client ${client} went back to version ${reading.version}`);
      newest = reading.version;
      for (const part of added.slice(0, reading.ownBefore))
        if (!reading.parts.includes(part)) faults.push(`client ${client} did not read its own ${part}`);
    }
  }
  same(last);
  const versions = [...stood].toSorted(([a], [b]) => a - b).map(([, text]) => text.split(" "));
  for (const [index, parts] of versions.entries())
    for (const part of versions[index - 1] ?? [])
      if (part !== "" && !parts.includes(part)) faults.push(`${part} went with a later version`);
  return faults;
}
