import { act, cleanup, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, describe, expect, it, vi } from "vitest";
import { Button } from "#web/shared/ui/Button.tsx";
import { ShowMore } from "#web/shared/ui/ShowMore.tsx";
import { useFetched } from "#web/shared/ui/use-fetched.ts";

afterEach(cleanup);

describe("a button", () => {
  it.each(["main", "plain", "quiet"] as const)("of the look %s has only classes that there are", (look) => {
    render(<Button look={look}>Keep</Button>);
    const { className } = screen.getByRole("button", { name: "Keep" });
    expect(className).not.toBe("");
    expect(className.split(" ")).not.toContain("undefined");
  });
});

describe("the rest of a long list", () => {
  const list = (shown: number, hasNextPage: boolean) => ({
    edges: Array.from({ length: shown }),
    totalCount: 7,
    pageInfo: { hasNextPage, endCursor: "c3" },
  });

  it("[A3] is read on from the last cursor, once at a time, and says how much is shown", async () => {
    const { promise, resolve } = Promise.withResolvers<void>();
    const onMore = vi.fn(() => promise);
    render(<ShowMore list={list(3, true)} onMore={onMore} label="Show older" />);
    expect(screen.getByText(/3 of 7 shown/)).toBeTruthy();
    const button = screen.getByRole("button", { name: "Show older" }) as HTMLButtonElement;
    await act(async () => void fireEvent.click(button));
    expect(onMore).toHaveBeenCalledExactlyOnceWith("c3");
    expect(button.disabled).toBe(true);
    await act(async () => resolve());
    expect(button.disabled).toBe(false);
  });

  it("is not spoken of where all is shown", () => {
    const { container } = render(<ShowMore list={list(7, false)} onMore={async () => undefined} />);
    expect(container.textContent).toBe("");
  });
});

const Fetched = ({ load }: { load: () => Promise<{ says: string }> }) => (
  <p>{useFetched(load)?.says ?? "not there yet"}</p>
);

describe("what is fetched once the page stands", () => {
  it("[P15] is there at once for the next who wants it", async () => {
    const load = vi.fn(async () => ({ says: "here" }));
    const first = render(<Fetched load={load} />);
    expect(first.container.textContent).toBe("not there yet");
    await screen.findByText("here");
    first.unmount();
    const second = render(<Fetched load={load} />);
    expect(second.container.textContent).toBe("here");
    expect(load).toHaveBeenCalledTimes(1);
  });

  it("[P5] leaves the page as it is where it does not come, and is asked for again by the next", async () => {
    const load = vi.fn(async (): Promise<{ says: string }> => {
      if (load.mock.calls.length === 1) throw new Error("The file did not arrive");
      return { says: "here" };
    });
    const first = render(<Fetched load={load} />);
    await act(async () => undefined);
    expect(first.container.textContent).toBe("not there yet");
    first.unmount();
    render(<Fetched load={load} />);
    expect(await screen.findByText("here")).toBeTruthy();
  });
});
