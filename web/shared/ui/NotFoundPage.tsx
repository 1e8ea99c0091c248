import { Link } from "wouter";
import { PageHeading } from "./PageHeading.tsx";
import styles from "./RouteBoundary.module.css";

interface Props {
  /** What was looked for, as a noun: "page", "term". */
  what?: string;
  id?: string;
}

/** Says that nothing stands at an address, and where to go on. */
export const NotFoundPage = ({ what = "page", id }: Props) => (
  <div className={styles["failure"]}>
    <PageHeading title={`No such ${what}`}>There is no such {what}</PageHeading>
    <p>
      {id ? `Nothing here has the id “${id}”. ` : "Nothing stands at this address. "}
      It may be mistyped, or belong to another copy of the evidence.
    </p>
    <p>
      Go on to <Link href="/">the pieces</Link> or <Link href="/evidence">search the evidence</Link>.
    </p>
  </div>
);
