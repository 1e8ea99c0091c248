import { slug } from "../slug.ts";
import type { CslItem } from "../source.ts";

/** Longest id that is made of a key. */
const LONGEST = 60;

/**
 * What a source would be called: by the key that it has in the list where that can be read, else by the first name and
 * the year, else by words of its title. A number follows where the id is taken.
 */
export function suggestId(item: CslItem, key: string, isTaken: (id: string) => boolean): string {
  const [name] = item.author ?? item.editor ?? [];
  const year = item.issued?.["date-parts"]?.[0]?.[0];
  const words = slug(item.title ?? "")
    .split("-")
    .slice(0, 5)
    .join("-");
  const own = slug(key.replace(/^source\./, ""));
  const named = slug(name?.family ?? name?.literal ?? "");
  const choices = [
    /^[a-z][a-z0-9-]*$/.test(own) && !key.includes("/") && own.length <= LONGEST ? own : "",
    named === "" ? "" : [named, year ?? words].filter((word) => word !== "").join("-"),
    words,
  ];
  const base = `source.${(choices.find((choice) => choice !== "") ?? "item").slice(0, LONGEST).replace(/-+$/, "")}`;
  for (let number = 1; ; number += 1) {
    const id = number === 1 ? base : `${base}-${number}`;
    if (!isTaken(id)) return id;
  }
}
