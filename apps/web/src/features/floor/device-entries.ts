import type { FloorEntry } from "./floor-entry";

const DATABASE = "buildproof-floor";
const STORE = "entries";

/** Entries kept on this device until the workshop has them: photos too, and past a reload. */
export type DeviceEntries = {
  list(): Promise<readonly FloorEntry[]>;
  put(entry: FloorEntry): Promise<void>;
  remove(key: string): Promise<void>;
  /** False where the browser keeps nothing (a private window): then entries last as long as the page. */
  readonly outlastsThePage: boolean;
};

export async function openDeviceEntries(): Promise<DeviceEntries> {
  try {
    const database = await openDatabase();
    return {
      outlastsThePage: true,
      list: async () => sorted(await answer(store(database, "readonly").getAll())),
      put: async (entry) => void (await answer(store(database, "readwrite").put(entry))),
      remove: async (key) => void (await answer(store(database, "readwrite").delete(key))),
    };
  } catch {
    return pageEntries();
  }
}

function pageEntries(): DeviceEntries {
  const held = new Map<string, FloorEntry>();
  return {
    outlastsThePage: false,
    list: async () => sorted([...held.values()]),
    put: async (entry) => void held.set(entry.key, entry),
    remove: async (key) => void held.delete(key),
  };
}

/** In the order in which they were made: a step is done before it is undone. */
function sorted(entries: readonly FloorEntry[]): readonly FloorEntry[] {
  return [...entries].sort((a, b) => a.madeAt.localeCompare(b.madeAt));
}

function openDatabase(): Promise<IDBDatabase> {
  const opening = indexedDB.open(DATABASE, 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore(STORE, { keyPath: "key" });
  return answer(opening);
}

function store(database: IDBDatabase, mode: IDBTransactionMode): IDBObjectStore {
  return database.transaction(STORE, mode).objectStore(STORE);
}

function answer<Value>(request: IDBRequest<Value>): Promise<Value> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}
