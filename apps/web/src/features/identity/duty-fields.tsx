import { type Role, roles, type Skill, skills } from "@buildproof/workshop";
import { Checkbox } from "@/design/checkbox";
import { roleNotes, roleWords, skillNotes, skillWords } from "./duty-words";

interface DutyFieldsProps {
  readonly roles?: readonly Role[];
  readonly skills?: readonly string[];
}

/** What a person may do, and what they are able to do beyond it. */
export function DutyFields({ roles: held = [], skills: able = [] }: DutyFieldsProps) {
  return (
    <>
      <fieldset className="field">
        <legend className="field-label">Roles: what the person may do</legend>
        {roles.map((role: Role) => (
          <Checkbox
            key={role}
            name="roles"
            value={role}
            label={capital(roleWords[role])}
            note={roleNotes[role]}
            defaultSelected={held.includes(role)}
          />
        ))}
      </fieldset>
      <fieldset className="field">
        <legend className="field-label">Skills: what the person is able to do</legend>
        {skills.map((skill: Skill) => (
          <Checkbox
            key={skill}
            name="skills"
            value={skill}
            label={capital(skillWords[skill])}
            note={skillNotes[skill]}
            defaultSelected={able.includes(skill)}
          />
        ))}
      </fieldset>
    </>
  );
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
