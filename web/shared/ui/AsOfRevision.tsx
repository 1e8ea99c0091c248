import { useQuery } from "@apollo/client/react";
import { Link, useLocation } from "wouter";
import { askedRevision } from "../navigation/asked-revision.ts";
import { useSearchInTransition } from "../navigation/use-location-in-transition.ts";
import { sayDay } from "../words/say-day.ts";
import { AsOfRevisionDocument } from "./AsOfRevision.graphql.ts";
import styles from "./AsOfRevision.module.css";

/** The state of the knowledge that answers on this page. */
export function AsOfRevision() {
  const [path] = useLocation();
  const asked = askedRevision(path, useSearchInTransition());
  const number = typeof asked === "number" ? asked : null;
  const { data, previousData } = useQuery(AsOfRevisionDocument, {
    variables: { asked: number, isAsked: number !== null },
  });
  const newest = (data ?? previousData)?.revision;
  const shown = data?.asked ?? newest;
  // Its line is kept free from the start: what stands below does not move when the answer comes.
  if (!newest || !shown) return <span className={styles["revision"]}>&nbsp;</span>;
  return (
    <Link className={styles["revision"]} href="/house/history">
      knowledge as of revision {shown.number}
      {shown.number < newest.number ? ` of ${newest.number}` : ""} · {sayDay(shown.at)}
    </Link>
  );
}
