import { useMemo, useState } from 'react';
import { mailLink } from '../../plan/mail.ts';
import { mailLines } from '../../session/plan-file/mail-lines.ts';
import { Action } from '../parts/action.tsx';
import { useJudgement, usePlan } from '../use-session.ts';

const MOST = 1500;

/** What stands in the message, as a mail program will show it. */
function messageOf(link: string): string {
  const body =
    new URLSearchParams(link.slice(link.indexOf('?') + 1).replaceAll('+', '%2B')).get('body') ?? '';
  return body.replaceAll('\r\n', '\n');
}

interface Props {
  readonly onSave: () => void;
}

/** Sends the plan by e-mail: a short message through a link, and the file that the sender attaches. */
export function MailPlan({ onSave }: Props) {
  const plan = usePlan();
  const judgement = useJudgement();
  const link = useMemo(() => mailLink(plan, mailLines(plan, judgement)), [plan, judgement]);
  const [open, setOpen] = useState(false);
  return (
    <section className="plan-file-part">
      <h3 className="type-section">Send by e-mail</h3>
      <p>
        Your mail program writes the message; this page sends nothing itself. A link cannot carry a file, so
        the plan goes along only if you attach it.
      </p>
      <ol className="plan-file-steps">
        <li>
          <Action onPress={onSave}>Save the plan as a file</Action>
        </li>
        <li>
          <a className="action plan-file-mail" href={link}>
            <span className="action-word">Write the message</span>
          </a>
          <span className="type-small base-soft" data-mail-length={link.length}>
            {link.length.toLocaleString('en')} of at most {MOST.toLocaleString('en')} characters
          </span>
        </li>
        <li className="type-label plan-file-attach">
          Attach the file to it in your mail program, then send.
        </li>
      </ol>
      <Action expanded={open} onPress={() => setOpen(!open)}>
        What the message says
      </Action>
      {open && <p className="plan-file-message type-small">{messageOf(link)}</p>}
    </section>
  );
}
