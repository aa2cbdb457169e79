package insidelift.shared;

/**
 * One thing that is known: the answer to a question. An unknown is no answer, so none of these
 * stands for it.
 *
 * @param question a question's id in the {@link Vocabulary}
 * @param value one of that question's values
 * @param complaint whether this value is something to complain of
 */
public record Answer(String question, String value, boolean complaint) {}
