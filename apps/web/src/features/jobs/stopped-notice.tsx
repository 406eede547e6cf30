import { momentText } from "@/design/moment-text";
import { Notice } from "@/design/notice";
import { ResumeJob } from "./resume-job";

interface StoppedNoticeProps {
  readonly jobId: string;
  readonly stopped: {
    readonly at: Date;
    readonly because: string;
    readonly resumed: { readonly at: Date; readonly because: string } | null;
  };
  readonly timeZone: string;
  readonly mayResume: boolean;
}

/** Why a job was stopped, for as long as the job is read; and the way back where it still is. */
export function StoppedNotice({ jobId, stopped, timeZone, mayResume }: StoppedNoticeProps) {
  const { at, because, resumed } = stopped;
  return (
    <Notice
      title={`${resumed ? "Was stopped" : "Stopped"} ${momentText(at, timeZone)}`}
      kind={resumed ? "caution" : "blocks"}
    >
      <p>{because}</p>
      {resumed && <p>{`Taken up again ${momentText(resumed.at, timeZone)}: ${resumed.because}`}</p>}
      {!resumed && mayResume && (
        <div className="form-actions">
          <ResumeJob jobId={jobId} />
        </div>
      )}
    </Notice>
  );
}
