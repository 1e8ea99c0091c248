import type { ReactNode } from "react";
import { Link } from "wouter";
import { addressAsOf } from "../navigation/asked-revision.ts";
import { useReadingRevision } from "../navigation/reading-revision.ts";

interface Props {
  to: string;
  children: ReactNode;
  className?: string;
}

/**
 * A link in running text. An address elsewhere opens as it is; one of ours changes the page in place, and from a page
 * that is read as of a revision it leads to what stood then.
 */
export function TextLink({ to, children, className }: Props) {
  const revision = useReadingRevision();
  return /^https?:/i.test(to) ? (
    <a href={to} className={className} rel="noreferrer">
      {children}
    </a>
  ) : (
    <Link href={addressAsOf(to, revision)} className={className}>
      {children}
    </Link>
  );
}
