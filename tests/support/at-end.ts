const tasks: (() => void)[] = [];

/** Does it when the file of tests that is running ends, and at the latest when the process does. */
export function atEnd(task: () => void): void {
  tasks.push(task);
}

/** Does now what was left for the end, the last first. */
export function doWhatIsLeft(): void {
  for (let task = tasks.pop(); task !== undefined; task = tasks.pop()) task();
}
process.once("exit", doWhatIsLeft);
