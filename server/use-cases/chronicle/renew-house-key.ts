import { isProblem } from "../../domain/problem.ts";
import type { House, Seals } from "../../ports/seals.ts";
import type { Store } from "../../ports/store.ts";
import { type Acting, refuseCaller, signed } from "../acting.ts";
import type { Refusal } from "../refusal.ts";

/** Puts a new key in the place of the one that the house signs with. What was signed before can be checked as before. */
export async function renewHouseKey(
  ports: Acting & { readonly store: Store; readonly seals: Seals },
): Promise<House | Refusal> {
  const refusal = refuseCaller(ports, "sign a checkpoint");
  if (refusal) return refusal;
  const along = signed(ports, "renew the key of the house");
  const written = await ports.store.writeCards(along);
  return isProblem(written) ? { refused: [written] } : ports.seals.renew(along.deed.at);
}
