package insidelift.engine.logbook.entry;

/** What one line of the logbook says. */
public sealed interface Entry
    permits KartEntry,
        BaselineEntry,
        DriverEntry,
        TrackEntry,
        DayEntry,
        RunEntry,
        ReviewEntry,
        AttemptEntry,
        Correction {}
