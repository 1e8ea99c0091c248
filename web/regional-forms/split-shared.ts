interface Profile<Found> {
  readonly region: { readonly id: string; readonly broaderTerms: readonly { readonly id: string }[] } | null;
  readonly found: readonly Found[];
}
interface Thing {
  readonly subject: { readonly id: string } | null;
  readonly claims: readonly { readonly id: string }[];
}

/** One subject, with what each region says of it; undefined where a region says nothing. */
export interface SharedSubject<Found> {
  readonly id: string;
  readonly at: readonly (Found | undefined)[];
}

/**
 * Subjects that at least two of the regions have, those of the most regions first, and what each has alone. Where one
 * region lies within another, a claim of both stands under the inner one only: it is one claim, and nothing is shared.
 */
export function splitShared<Found extends Thing>(all: readonly Profile<Found>[]) {
  return splitFound(all.map((profile) => ({ found: foundOutside(profile, innerOf(profile, all)) })));
}

const innerOf = <Found>(outer: Profile<Found>, all: readonly Profile<Found>[]): readonly Profile<Found>[] =>
  all.filter(({ region }) => region?.broaderTerms.some(({ id }) => id === outer.region?.id));

function foundOutside<Found extends Thing>(
  { found }: Profile<Found>,
  inner: readonly Profile<Found>[],
): readonly Found[] {
  const inside = new Set(
    inner.flatMap((each) => each.found.flatMap(({ claims }) => claims.map(({ id }) => id))),
  );
  return found.flatMap((each) => {
    const claims = each.claims.filter(({ id }) => !inside.has(id));
    return claims.length === 0 ? [] : [{ ...each, claims }];
  });
}

function splitFound<Found extends Thing>(profiles: readonly Pick<Profile<Found>, "found">[]) {
  const ids = [
    ...new Set(profiles.flatMap(({ found }) => found.flatMap(({ subject }) => subject?.id ?? []))),
  ];
  const all = ids.map(
    (id): SharedSubject<Found> => ({
      id,
      at: profiles.map(({ found }) => found.find(({ subject }) => subject?.id === id)),
    }),
  );
  const count = ({ at }: SharedSubject<Found>) => at.filter((found) => found !== undefined).length;
  return {
    shared: all.filter((each) => count(each) > 1).sort((a, b) => count(b) - count(a)),
    alone: profiles.map((_, i) =>
      all.flatMap((each) => (count(each) === 1 && each.at[i] ? [each.at[i]] : [])),
    ),
  };
}
