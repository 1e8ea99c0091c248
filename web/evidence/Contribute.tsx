import { useQuery } from "@apollo/client/react";
import { useReadOn } from "../shared/navigation/reading-revision.ts";
import { TextLink } from "../shared/ui/TextLink.tsx";
import { ContributeDocument } from "./Contribute.graphql.ts";
import styles from "./reading.module.css";

/** Where something is proposed of a thing: put right, or a claim about or within a term. */
function writingsOf(of: string): readonly { readonly to: string; readonly name: string }[] {
  const kind = of.split(".")[0] ?? "";
  const right = { to: `/house/propose?kind=correction&about=${of}`, name: "Put it right" };
  if (kind === "claim" || kind === "source") return [right];
  const field = ["region", "form", "part"].includes(kind) ? kind : "subject";
  return [
    right,
    {
      to: `/house/propose?kind=claim&${field}=${of}`,
      name: field === "subject" ? "Propose a claim about it" : "Propose a claim that holds for it",
    },
  ];
}

/** Leads to where a term, a claim or a source is put right, and to what is proposed of it already; not on an old reading. */
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
      {writingsOf(of).map(({ to, name }) => (
        <li key={to}>
          <TextLink to={to}>{name}</TextLink>
        </li>
      ))}
      {data?.proposalsOn.map(({ id, title }) => (
        <li key={id}>
          Proposed: <TextLink to={`/house/proposals/${id}`}>{title || "(no title yet)"}</TextLink>
        </li>
      ))}
    </ul>
  );
}
