import { useQuery } from "@apollo/client/react";
import { Link } from "wouter";
import { sayDay } from "../words/say-day.ts";
import { AsOfRevisionDocument } from "./AsOfRevision.graphql.ts";
import styles from "./AsOfRevision.module.css";

/** The state of the knowledge that answers on this page. */
export function AsOfRevision() {
  const { data } = useQuery(AsOfRevisionDocument);
  if (!data?.revision) return null;
  const { number, at } = data.revision;
  return (
    <Link className={styles["revision"]} href="/revisions">
      knowledge as of revision {number} · {sayDay(at)}
    </Link>
  );
}
