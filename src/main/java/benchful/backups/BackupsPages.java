package benchful.backups;

import benchful.backups.BackupFolder.Kept;
import benchful.backups.archive.BackupFault;
import benchful.core.Fault;
import benchful.web.Pages;
import benchful.web.forms.SpecForm;
import benchful.web.forms.SpecPost;
import benchful.web.forms.SpecReader;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.jboss.resteasy.reactive.RestForm;

/** Taking backups: into the folder, to the browser, and on schedule. */
@Path("/backups")
@Produces(MediaType.TEXT_HTML)
class BackupsPages {
    private static final SpecReader<ScheduleSpec> READER = new SpecReader<>(ScheduleSpec.class, sheet -> List.of());
    private static final int SHORTEST = 8;

    private final Backups backups;
    private final Folders folders;
    private final Passphrase passphrase;
    private final Clock clock;

    BackupsPages(Backups backups, Folders folders, Passphrase passphrase, Clock clock) {
        this.backups = backups;
        this.folders = folders;
        this.passphrase = passphrase;
        this.clock = clock;
    }

    @CheckedTemplate(basePath = "backups")
    static class Templates {
        static native TemplateInstance index(BackupsView page);

        private Templates() {}
    }

    @GET
    @Transactional
    public TemplateInstance index() {
        return page(stored(), null);
    }

    @POST
    public Response create() {
        try {
            backups.press();
            return Pages.seeOther("/backups");
        } catch (BackupFault e) {
            return faulty(e.getMessage());
        }
    }

    @POST
    @Path("downloads")
    public Response download() {
        java.nio.file.Path file = folders.temporary();
        try {
            Kept kept = backups.pack(file);
            return Download.of(file, kept, () -> backups.sent(kept), () -> Restores.delete(file));
        } catch (BackupFault e) {
            Restores.delete(file);
            return faulty(e.getMessage());
        }
    }

    @POST
    @Path("postponement")
    public Response postpone() {
        backups.putOff();
        return Pages.seeOther("/");
    }

    @POST
    @Path("schedule")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Transactional
    public Response update(MultivaluedMap<String, String> form) {
        BackupSchedule schedule = BackupSchedule.current(LocalDate.now(clock));
        return new SpecPost<>(READER, f -> page(f, null)).answer(form, new ScheduleTarget(schedule, folders));
    }

    @POST
    @Path("passphrase")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response lock(@RestForm String passphrase, @RestForm String again) {
        String fault = unfit(passphrase, again);
        if (fault != null) {
            return faulty(fault);
        }
        this.passphrase.set(passphrase);
        return Pages.seeOther("/backups#passphrase");
    }

    private String unfit(String written, String again) {
        if (passphrase.isFixed() || passphrase.file().isEmpty()) {
            return "The passphrase is set with %s where Benchful is started, not here.".formatted("BENCHFUL_BACKUP_PASSPHRASE");
        }
        if (written == null || !written.equals(again)) {
            return "The two passphrases differ. Type the same one twice.";
        }
        boolean fits = written.isEmpty() || written.length() >= SHORTEST && !written.isBlank();
        return fits ? null : "A passphrase needs %d letters at least; four or five words are best. Leave both fields empty for none.".formatted(SHORTEST);
    }

    private SpecForm stored() {
        BackupSchedule schedule = BackupSchedule.current(LocalDate.now(clock));
        return SpecForm.of(READER.written(schedule.sheet), schedule.version);
    }

    private Response faulty(String sentence) {
        return QuarkusTransaction.joiningExisting().call(() -> Pages.faulty(page(stored(), sentence)));
    }

    private TemplateInstance page(SpecForm form, String fault) {
        ZoneId zone = clock.getZone();
        Shelf shelf = shelf();
        return Templates.index(new BackupsView(form, fault == null ? shelf.fault() : fault, backups.notice(), shelf.folder(), folders.mayBeChosen(),
                BackupsView.Lock.of(passphrase), shelf.files().stream().map(k -> BackupsView.File.of(k, zone)).toList(),
                backups.log().stream().map(b -> BackupsView.Line.of(b, zone)).toList()));
    }

    private record Shelf(String folder, List<Kept> files, String fault) {}

    private Shelf shelf() {
        try {
            BackupFolder folder = backups.folder();
            try {
                return new Shelf(folder.path().toString(), folder.files(), null);
            } catch (BackupFault e) {
                return new Shelf(folder.path().toString(), List.of(), e.getMessage());
            }
        } catch (BackupFault e) {
            return new Shelf(null, List.of(), e.getMessage());
        }
    }

    /** Where the schedule is stored. */
    private record ScheduleTarget(BackupSchedule schedule, Folders folders) implements SpecPost.Target<ScheduleSpec> {
        @Override
        public long version() {
            return schedule.version;
        }

        @Override
        public ScheduleSpec stored() {
            return schedule.sheet;
        }

        @Override
        public List<Fault> faults(ScheduleSpec sheet) {
            if (sheet.folder() == null || sheet.folder().equals(schedule.sheet.folder())) {
                return List.of();
            }
            if (!folders.mayBeChosen()) {
                return List.of(new Fault("/folder", "The folder is chosen with BENCHFUL_BACKUP_FOLDER where Benchful is started, not here."));
            }
            try {
                folders.of(sheet).requireThere();
                return List.of();
            } catch (BackupFault e) {
                return List.of(new Fault("/folder", e.getMessage()));
            }
        }

        @Override
        public String save(ScheduleSpec sheet) {
            schedule.sheet = sheet;
            BackupSchedule.flush();
            return "/backups";
        }
    }
}
