import { TextLink } from "../shared/ui/TextLink.tsx";
import type { CompareRegionsQuery } from "./ComparePage.graphql.ts";
import styles from "./ComparePage.module.css";
import { groupNames } from "./group-names.ts";
import regional from "./regional.module.css";
import { sayBasis, sayBriefly } from "./say-placed.ts";

type Profiles = CompareRegionsQuery["regionProfiles"];
type Found = Profiles[number]["found"][number];

interface Props {
  profiles: Profiles;
  /** For each region what no other of them has. */
  alone: readonly (readonly Found[])[];
}

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

const Group = ({ name, found }: { name: string; found: readonly Found[] }) =>
  found.length === 0 ? null : (
    <>
      <h4>{name}</h4>
      <ul>
        {found.map(({ subject, claims }) => (
          <li key={subject?.id}>
            {subject ? <TextLink to={`/terms/${subject.id}`}>{subject.label}</TextLink> : null}{" "}
            {claims.map((claim) => (
              <span key={claim.id} className={regional["beside"]}>
                {"· "}
                <TextLink to={`/claims/${claim.id}`}>{sayBriefly(claim)}</TextLink> {sayBasis(claim)}{" "}
              </span>
            ))}
          </li>
        ))}
      </ul>
    </>
  );
