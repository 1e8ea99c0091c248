import { useQuery } from "@apollo/client/react";
import { useReadOn } from "../shared/navigation/reading-revision.ts";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { ContributeDocument } from "./Contribute.graphql.ts";
import styles from "./reading.module.css";

/** Leads to where a term or a claim is put right, and to what is proposed of it already; not on an old reading. */
export function Contribute({ of }: { of: string }) {
  const isOld = useReadOn().revision !== undefined;
  const { data } = useQuery(ContributeDocument, {
    variables: { of },
    fetchPolicy: "cache-and-network",
    skip: isOld,
  });
  if (isOld) return null;
  return (
    <ul className={`${styles["contribute"]} screen-only`}>
      <li>
        <TextLink to={`/house/correct/${of}`}>Propose a correction</TextLink>
      </li>
      {data?.proposalsOn.map(({ id, title }) => (
        <li key={id}>
          Proposed: <TextLink to={`/house/proposals/${id}`}>{title || "(no title yet)"}</TextLink>
        </li>
      ))}
    </ul>
  );
}
