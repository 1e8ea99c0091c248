import type { Standing } from "../graph-view.ts";
import { namesOf } from "../names-of.ts";

type Place = readonly (string | number)[];

/** A thing of the graph that names one term wherever it named another; in lists of terms each stands once. */
export function renamedIn<One extends Standing>(standing: One, from: string, to: string): One {
  const places = namesOf(standing)
    .filter((name) => name.kind === "term" && name.id === from)
    .map((name) => name.path);
  if (places.length === 0) return standing;
  const renamed = places.reduce<unknown>((thing, place) => put(thing, place, to), standing.thing);
  return { ...standing, thing: places.reduce(once, renamed) };
}

function put(value: unknown, [step, ...rest]: Place, to: string): unknown {
  if (step === undefined) return to;
  if (Array.isArray(value)) return value.map((each, i) => (i === step ? put(each, rest, to) : each));
  const members = value as Readonly<Record<string, unknown>>;
  return { ...members, [step]: put(members[step], rest, to) };
}

/** Takes out of the list of terms that a place lies in what stands in it twice. */
function once(value: unknown, place: Place): unknown {
  if (Array.isArray(value) && place.length === 1)
    return value.every((each) => typeof each === "string") ? [...new Set(value)] : value;
  const [step, ...rest] = place;
  if (step === undefined || typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map((each, i) => (i === step ? once(each, rest) : each));
  const members = value as Readonly<Record<string, unknown>>;
  return { ...members, [step]: once(members[step], rest) };
}
