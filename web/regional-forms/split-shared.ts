interface Profile<Found> {
  readonly found: readonly Found[];
}
interface Thing {
  readonly subject: { readonly id: string } | null;
}

/** One subject, with what each region says of it; undefined where a region says nothing. */
export interface SharedSubject<Found> {
  readonly id: string;
  readonly at: readonly (Found | undefined)[];
}

/** Subjects that at least two of the regions have, those of the most regions first, and what each has alone. */
export function splitShared<Found extends Thing>(profiles: readonly Profile<Found>[]) {
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
