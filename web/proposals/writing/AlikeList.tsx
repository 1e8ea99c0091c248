import type { AlikeBy } from "#web/shared/apollo/schema-types.graphql.ts";
import { TextLink } from "#web/shared/ui/TextLink.tsx";
import styles from "./writing.module.css";

interface Found {
  readonly of: string;
  readonly by: AlikeBy;
  readonly says: string;
}

const BY_WORDS: Readonly<Record<AlikeBy, string>> = {
  SAME_CLAIM: "says the same, as far as it can be told",
  SAME_LABEL: "has the same name",
  SAME_SOURCE: "seems to be the same source",
  SAME_SOURCE_AND_PLACE: "comes from the same place of the same source",
};
const PLACES: Readonly<Record<string, string>> = { claim: "/claims/", source: "/sources/" };

/** What stands already and may be the same, each with why it is named. */
export const AlikeList = ({ alike }: { alike: readonly Found[] }) => (
  <ul>
    {alike.map(({ of, by, says }) => (
      <li key={`${of} ${by}`}>
        <TextLink to={`${PLACES[of.split(".")[0] ?? ""] ?? "/terms/"}${of}`}>{says}</TextLink>{" "}
        <span className={styles["beside"]}>{BY_WORDS[by]}</span>
      </li>
    ))}
  </ul>
);
