import type { ReactNode } from "react";
import { Link, useLocation } from "wouter";
import { useSearch as useAddressSearch, usePathname } from "wouter/use-browser-location";
import { useArrivals } from "../navigation/use-arrivals.ts";
import { useSearchInTransition } from "../navigation/use-location-in-transition.ts";
import { AsOfRevision } from "./AsOfRevision.tsx";
import styles from "./Frame.module.css";

const places = [
  { to: "/", name: "Pieces", holds: /^\/(pieces\/|plan|$)/ },
  { to: "/evidence", name: "Evidence", holds: /^\/(evidence|terms|claims|sources|revisions)/ },
  { to: "/regions", name: "Regions", holds: /^\/regions/ },
  { to: "/learn", name: "Learn", holds: /^\/(learn|method|sheets)/ },
  { to: "/house", name: "The house", holds: /^\/(house|people|audit|account)/ },
];

/** What surrounds every page: skip link, the places one can go, the revision that answers, the caution. */
export function Frame({ children }: { children: ReactNode }) {
  const [path] = useLocation();
  const search = useSearchInTransition();
  const isPathAhead = usePathname() !== path;
  const isSearchAhead = useAddressSearch() !== search;
  useArrivals(path + search);
  return (
    <div className={styles["frame"]}>
      <a className={styles["skip"]} href="#content">
        Skip to the page
      </a>
      <header className={styles["head"]}>
        <Link className={styles["mark"]} href="/">
          Scribeline
        </Link>
        <nav aria-label="Places">
          <ul className={styles["places"]}>
            {places.map(({ to, name, holds }) => (
              <li key={to}>
                <Link href={to} aria-current={holds.test(path) ? "page" : undefined}>
                  {name}
                </Link>
              </li>
            ))}
          </ul>
        </nav>
        <AsOfRevision />
        <p role="status" className={styles["under-way"]}>
          {isPathAhead || isSearchAhead ? "Reading the next page …" : null}
        </p>
      </header>
      <main id="content" tabIndex={-1} className={styles["content"]}>
        {children}
      </main>
      <footer className={styles["foot"]}>
        Evidence, not a certificate or a valuation. Take nothing apart to look: that is for a conservator.{" "}
        <Link href="/method#cautions">Cautions</Link> <Link href="/sheets">Field sheets</Link>{" "}
        <Link href="/account">Account</Link>
      </footer>
    </div>
  );
}
