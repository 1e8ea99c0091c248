import type { ReactNode } from "react";
import { Link } from "wouter";

interface Props {
  to: string;
  children: ReactNode;
  className?: string;
}

/** A link in running text. An address elsewhere opens as it is; one of ours changes the page in place. */
export const TextLink = ({ to, children, className }: Props) =>
  /^https?:/i.test(to) ? (
    <a href={to} className={className} rel="noreferrer">
      {children}
    </a>
  ) : (
    <Link href={to} className={className}>
      {children}
    </Link>
  );
