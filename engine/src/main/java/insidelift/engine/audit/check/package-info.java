/** Each check of the audit: on the index of the rules, and in every situation that is visited. */
package insidelift.engine.audit.check;
