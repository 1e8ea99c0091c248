import { spawnSync } from "node:child_process";
import { mkdirSync, rmSync, statfsSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** A disk of its own, so small that it can be filled. */
export interface SmallDisk {
  readonly folder: string;
  /** Takes all the room there is but so many bytes. */
  fill(leave: number): void;
  /** Gives it back. */
  makeRoom(): void;
  unmount(): void;
}

/** Mounts one of so many bytes on a folder; none where this user may not. */
export function mountSmallDisk(folder: string, size: number): SmallDisk | undefined {
  mkdirSync(folder, { recursive: true });
  const mounted = spawnSync("mount", ["-t", "tmpfs", "-o", `size=${size},mode=0700`, "tmpfs", folder]);
  if (mounted.status !== 0) return undefined;
  const ballast = join(folder, "ballast");
  return {
    folder,
    fill: (leave) => {
      const { bavail, bsize } = statfsSync(folder);
      try {
        writeFileSync(ballast, Buffer.alloc(Math.max(0, bavail * bsize - leave)));
      } catch (failure) {
        // Others write meanwhile: then it is full already.
        if ((failure as NodeJS.ErrnoException).code !== "ENOSPC") throw failure;
      }
    },
    makeRoom: () => rmSync(ballast, { force: true }),
    unmount: () => {
      spawnSync("umount", ["-l", folder]);
    },
  };
}
