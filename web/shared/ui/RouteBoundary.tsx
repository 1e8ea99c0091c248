import { Component, type ReactNode } from "react";
import { Button } from "./Button.tsx";
import { PageHeading } from "./PageHeading.tsx";
import styles from "./RouteBoundary.module.css";
import { sayFailure } from "./say-failure.ts";

interface Props {
  children: ReactNode;
}

/**
 * Keeps a failure to the page it happened on: says what is wrong and offers to try again. Trying again loads the page
 * anew, since what failed to arrive (an answer, a file of the client) is remembered as failed.
 */
export class RouteBoundary extends Component<Props, { failure?: unknown }> {
  override state: { failure?: unknown } = {};

  static getDerivedStateFromError(failure: unknown) {
    return { failure: failure ?? new Error("unknown failure") };
  }

  override render() {
    if (this.state.failure === undefined) return this.props.children;
    const { title, what, next } = sayFailure(this.state.failure);
    return (
      <div className={styles["failure"]} role="alert">
        <PageHeading title={title}>{title}</PageHeading>
        <p>{what}</p>
        <p>{next}</p>
        <Button onPress={() => window.location.reload()}>Try again</Button>
      </div>
    );
  }
}
