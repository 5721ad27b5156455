package benchful.web.forms;

import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;

/** Answers of the API are written as sheets are: the same keys, amounts and times. */
@ApplicationScoped
class JsonAnswers {
    @Produces
    @Singleton
    ObjectMapper mapper() {
        return SpecFormat.json();
    }
}
