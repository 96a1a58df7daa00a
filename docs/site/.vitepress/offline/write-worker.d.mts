export function writeWorker(folder: string): void;
