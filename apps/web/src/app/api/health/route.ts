import { house } from "@/server/house";

/** Whether the service and its database answer. */
export async function GET(): Promise<Response> {
  try {
    await house().database.ping();
    return Response.json({ database: "answers" });
  } catch {
    return Response.json({ database: "does not answer" }, { status: 503 });
  }
}
