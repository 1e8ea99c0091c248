import type { PeoplePorts } from "./people-ports.ts";
import { houseSecret } from "./sign-in-card.ts";

/** What is begun by one request and ended by another, and kept by the browser meanwhile, sealed. */
interface Sealed<What> {
  readonly what: What;
  /** ISO 8601 time in UTC. */
  readonly begunAt: string;
}
const HOLDS = 10 * 60_000;
type Ports = Pick<PeoplePorts, "store" | "secrets" | "now">;

/** Seals what was begun, for ten minutes. `purpose` keeps one thing from passing for another. */
export async function sealBegun<What>(ports: Ports, purpose: string, what: What): Promise<string> {
  const sealed: Sealed<What> = { what, begunAt: ports.now() };
  return ports.secrets.seal(JSON.stringify(sealed), await keyOf(ports, purpose));
}

/** What was begun; undefined if it was not begun here, for something else, or too long ago. */
export async function unsealBegun<What>(
  ports: Ports,
  purpose: string,
  text: string,
): Promise<Sealed<What> | undefined> {
  const read = ports.secrets.unseal(text, await keyOf(ports, purpose));
  if (read === undefined) return undefined;
  const sealed = JSON.parse(read) as Sealed<What>;
  return Date.parse(ports.now()) - Date.parse(sealed.begunAt) < HOLDS ? sealed : undefined;
}

async function keyOf(ports: Ports, purpose: string): Promise<string> {
  const secret = await houseSecret(ports);
  // Without one, everybody could make the key.
  if (secret === undefined) throw new Error("There are no accounts yet: makeSalt comes first");
  return `${purpose} ${secret}`;
}
