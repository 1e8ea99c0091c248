import { useState } from "react";
import { Button } from "../shared/ui/Button.tsx";
import { TextLink } from "../shared/ui/TextLink.tsx";
import type { CompareRegionsQuery } from "./ComparePage.graphql.ts";
import styles from "./ComparePage.module.css";
import { byFirstYear } from "./group-found.ts";
import { groupNames } from "./group-names.ts";
import regional from "./regional.module.css";
import { sayBasis, sayBriefly } from "./say-placed.ts";

type Profiles = NonNullable<CompareRegionsQuery["regionProfiles"]>;
type Found = Profiles[number]["found"][number];

interface Props {
  profiles: Profiles;
  /** For each region what no other of them has. */
  alone: readonly (readonly Found[])[];
}

/** Things of a group shown before the rest is asked for. */
const AT_FIRST = 15;

/** What each region has that the others have not, in columns, by group. */
export const AloneColumns = ({ profiles, alone }: Props) => (
  <section className={regional["section"]}>
    <h2>Where they differ</h2>
    <div className={styles["alone"]}>
      {profiles.map(({ region }, i) => (
        <div key={region?.id}>
          <h3>
            Of these, claimed of {region?.label} alone · {alone[i]?.length ?? 0}
          </h3>
          {groupNames.map(({ group, name }) => (
            <Group key={group} name={name} found={(alone[i] ?? []).filter((each) => each.group === group)} />
          ))}
        </div>
      ))}
    </div>
  </section>
);

/** Things of one group, the first of them until the rest is asked for. */
function Group({ name, found }: { name: string; found: readonly Found[] }) {
  const [isWhole, setIsWhole] = useState(false);
  if (found.length === 0) return null;
  const shown = isWhole ? found : found.slice(0, AT_FIRST);
  return (
    <>
      <h4>{name}</h4>
      <ul>
        {shown.map(({ subject, claims }) => (
          <li key={subject?.id}>
            {subject ? <TextLink to={`/terms/${subject.id}`}>{subject.label}</TextLink> : null}{" "}
            {byFirstYear(claims).map((claim) => (
              <span key={claim.id} className={regional["beside"]}>
                {"· "}
                <TextLink to={`/claims/${claim.id}`}>{sayBriefly(claim)}</TextLink> {sayBasis(claim)}{" "}
              </span>
            ))}
          </li>
        ))}
      </ul>
      {shown.length < found.length ? (
        <p className={regional["more"]}>
          <Button onPress={() => setIsWhole(true)}>Show all {found.length}</Button> {shown.length} shown
        </p>
      ) : null}
    </>
  );
}
