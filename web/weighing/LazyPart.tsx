import { Component, type ReactNode, Suspense } from "react";

interface Props {
  /** What stands there, for who has to be told that it could not be loaded. */
  what: string;
  children: ReactNode;
}

/** A part of the page that is fetched by itself. Where it cannot be, the rest of the page stands. */
export const LazyPart = ({ what, children }: Props) => (
  <LoadedOrNot what={what}>
    <Suspense fallback={null}>{children}</Suspense>
  </LoadedOrNot>
);

class LoadedOrNot extends Component<Props, { hasFailed: boolean }> {
  override state = { hasFailed: false };

  static getDerivedStateFromError() {
    return { hasFailed: true };
  }

  override render() {
    return this.state.hasFailed ? (
      <p role="alert">{this.props.what} could not be shown. What is stored is safe; load the page again.</p>
    ) : (
      this.props.children
    );
  }
}
