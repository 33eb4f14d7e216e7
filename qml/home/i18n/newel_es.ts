<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es_ES">
<context>
    <name>AboutPage</name>
    <message>
        <source>What Newel is, and is not</source>
        <translation>Qué es Newel y qué no es</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>Lo he leído</translation>
    </message>
</context>
<context>
    <name>AdvicePage</name>
    <message>
        <source>This card is not in your language yet.</source>
        <translation>Esta ficha aún no está en su idioma.</translation>
    </message>
    <message>
        <source>From your therapist: %1</source>
        <translation>De su terapeuta: %1</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Qué hacer</translation>
    </message>
    <message>
        <source>Whom to phone</source>
        <translation>A quién llamar</translation>
    </message>
    <message>
        <source>Write it down for the clinic</source>
        <translation>Anótelo para la clínica</translation>
    </message>
</context>
<context>
    <name>AskRemindersPage</name>
    <message>
        <source>May the phone remind you?</source>
        <translation>¿Puede avisarle el teléfono?</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Practice is easily forgotten. The phone can show a short note when something is due. The note says nothing about your body or your exercises.</source>
        <translation>La práctica se olvida fácilmente. El teléfono puede mostrar un aviso breve cuando toca algo. El aviso no dice nada de su cuerpo ni de sus ejercicios.</translation>
    </message>
    <message>
        <source>You can put a note off, or turn them all off in Settings.</source>
        <translation>Puede aplazar un aviso, o quitarlos todos en Ajustes.</translation>
    </message>
    <message>
        <source>Yes, remind me</source>
        <translation>Sí, avíseme</translation>
    </message>
    <message>
        <source>No reminders</source>
        <translation>Sin avisos</translation>
    </message>
</context>
<context>
    <name>CallsPage</name>
    <message>
        <source>Whom to call</source>
        <translation>A quién llamar</translation>
    </message>
    <message>
        <source>These numbers stand under Help. Newel itself calls nobody.</source>
        <translation>Estos números están en Ayuda. Newel no llama a nadie por sí solo.</translation>
    </message>
</context>
<context>
    <name>ClipView</name>
    <message>
        <source>Stop the clip</source>
        <translation>Parar el vídeo</translation>
    </message>
    <message>
        <source>Play the clip</source>
        <translation>Ver el vídeo</translation>
    </message>
    <message>
        <source>This device cannot play the clip. What it shows is written here.</source>
        <translation>Este aparato no puede mostrar el vídeo. Aquí está escrito lo que muestra.</translation>
    </message>
    <message>
        <source>The clip shows: %1</source>
        <translation>El vídeo muestra: %1</translation>
    </message>
    <message>
        <source>What is said: %1</source>
        <translation>Lo que se dice: %1</translation>
    </message>
</context>
<context>
    <name>ClosePage</name>
    <message>
        <source>What the clinic gets</source>
        <translation>Lo que recibe la clínica</translation>
    </message>
    <message>
        <source>Back to today</source>
        <translation>Volver a hoy</translation>
    </message>
    <message>
        <source>The clinic has it</source>
        <translation>La clínica ya lo tiene</translation>
    </message>
    <message>
        <source>That is what you did of each exercise, your answers before it, and your numbers for pain and effort.</source>
        <translation>Es lo que hizo de cada ejercicio, sus respuestas de antes y sus números de dolor y esfuerzo.</translation>
    </message>
</context>
<context>
    <name>ContactNotices</name>
    <message>
        <source>Practise as usual: what you do is kept on this phone and sent later. But news from your therapist does not reach you. See that the phone is online. If it is, call the clinic.</source>
        <translation>Practique como siempre: lo que haga se guarda en este teléfono y se envía después. Pero no le llegan noticias de su terapeuta. Mire si el teléfono tiene conexión. Si la tiene, llame a la clínica.</translation>
    </message>
    <message>
        <source>No contact with the clinic yet</source>
        <translation>Aún no hay contacto con la clínica</translation>
    </message>
    <message>
        <source>No contact with the clinic since %1</source>
        <translation>Sin contacto con la clínica desde %1</translation>
    </message>
    <message>
        <source>The clinic ended this phone&apos;s access</source>
        <translation>La clínica retiró el acceso a este teléfono</translation>
    </message>
    <message>
        <source>You cannot practise with it now, and nothing new comes from the clinic. What you did is kept on this phone. Call the clinic: with a new code the phone works again.</source>
        <translation>Ahora no puede practicar con él, y no llega nada nuevo de la clínica. Lo que hizo sigue guardado en este teléfono. Llame a la clínica: con un código nuevo el teléfono vuelve a funcionar.</translation>
    </message>
    <message>
        <source>The date on this phone seems wrong</source>
        <translation>La fecha de este teléfono parece equivocada</translation>
    </message>
    <message>
        <source>So the phone cannot tell what is due, nor reach the clinic. Set date and time in the phone&apos;s own settings.</source>
        <translation>Por eso el teléfono no sabe qué toca ni puede llegar a la clínica. Ponga la fecha y la hora en los ajustes del propio teléfono.</translation>
    </message>
    <message>
        <source>This phone&apos;s memory is full</source>
        <translation>La memoria de este teléfono está llena</translation>
    </message>
    <message>
        <source>What you do cannot be kept, so you cannot practise with it now. Remove photos or programs that you do not need.</source>
        <translation>Lo que haga no se puede guardar, así que ahora no puede practicar con él. Borre fotos o programas que no necesite.</translation>
    </message>
    <message>
        <source>The clinic&apos;s computer gave an answer that is not right</source>
        <translation>El ordenador de la clínica dio una respuesta que no es correcta</translation>
    </message>
    <message>
        <source>Practise as usual: what you do is kept on this phone. Call the clinic, so that someone looks into it. A new code may help.</source>
        <translation>Practique como siempre: lo que haga se guarda en este teléfono. Llame a la clínica para que alguien lo mire. Puede ayudar un código nuevo.</translation>
    </message>
</context>
<context>
    <name>CourseExtras</name>
    <message numerus="yes">
        <source>Worn on %Ln day(s), at most %1 in a day.</source>
        <translation>
            <numerusform>Puesta %Ln día, como mucho %1 en un día.</numerusform>
            <numerusform>Puesta %Ln días, como mucho %1 en un día.</numerusform>
        </translation>
    </message>
    <message>
        <source>The skin was hurt: %L1.</source>
        <translation>Piel dañada: %L1.</translation>
    </message>
    <message>
        <source>Red skin: %L1.</source>
        <translation>Piel roja: %L1.</translation>
    </message>
    <message>
        <source>No red skin.</source>
        <translation>Sin piel roja.</translation>
    </message>
    <message>
        <source>%1 seconds</source>
        <translation>%1 segundos</translation>
    </message>
    <message>
        <source>%1 metres</source>
        <translation>%1 metros</translation>
    </message>
    <message>
        <source>%1 metres a second</source>
        <translation>%1 metros por segundo</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 puntos</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>a value, a day</comment>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>Last: %1.</source>
        <translation>Última vez: %1.</translation>
    </message>
    <message>
        <source>Before: %1.</source>
        <translation>Antes: %1.</translation>
    </message>
    <message>
        <source>Your clinic wanted to measure this by %1.</source>
        <translation>Su clínica quería medir esto antes del %1.</translation>
    </message>
    <message>
        <source>Your clinic will measure this by %1. You need not do it at home.</source>
        <translation>Su clínica medirá esto antes del %1. No hace falta que lo haga en casa.</translation>
    </message>
    <message>
        <source>Less is better. What a change means for you, your therapist can say.</source>
        <translation>Menos es mejor. Lo que un cambio significa para usted se lo dirá su terapeuta.</translation>
    </message>
    <message>
        <source>More is better. What a change means for you, your therapist can say.</source>
        <translation>Más es mejor. Lo que un cambio significa para usted se lo dirá su terapeuta.</translation>
    </message>
    <message>
        <source>%1, left leg</source>
        <translation>%1, pierna izquierda</translation>
    </message>
    <message>
        <source>%1, right leg</source>
        <translation>%1, pierna derecha</translation>
    </message>
</context>
<context>
    <name>DrawnPage</name>
    <message>
        <source>How you are drawn</source>
        <translation>Cómo se le dibuja</translation>
    </message>
    <message>
        <source>Choose what feels right. Only this phone knows it.</source>
        <translation>Elija lo que le parezca bien. Solo lo sabe este teléfono.</translation>
    </message>
    <message>
        <source>Build</source>
        <translation>Complexión</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Delgada</translation>
    </message>
    <message>
        <source>Medium</source>
        <translation>Media</translation>
    </message>
    <message>
        <source>Heavy</source>
        <translation>Robusta</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Piel</translation>
    </message>
    <message>
        <source>Skin %L1 of %L2, from light to dark</source>
        <translation>Piel %L1 de %L2, de clara a oscura</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Cabeza</translation>
    </message>
    <message>
        <source>With hair</source>
        <translation>Con pelo</translation>
    </message>
    <message>
        <source>Without hair</source>
        <translation>Sin pelo</translation>
    </message>
    <message>
        <source>With a head scarf</source>
        <translation>Con pañuelo</translation>
    </message>
</context>
<context>
    <name>EntryMedia</name>
    <message>
        <source>The photo and the clip are still coming. You can practise without them.</source>
        <translation>La foto y el vídeo aún están en camino. Puede practicar sin ellos.</translation>
    </message>
    <message>
        <source>The photo is still coming. You can practise without it.</source>
        <translation>La foto aún está en camino. Puede practicar sin ella.</translation>
    </message>
    <message>
        <source>The clip is still coming. You can practise without it.</source>
        <translation>El vídeo aún está en camino. Puede practicar sin él.</translation>
    </message>
    <message>
        <source>The photo shows: %1</source>
        <translation>La foto muestra: %1</translation>
    </message>
</context>
<context>
    <name>ErasePage</name>
    <message>
        <source>Erase everything about you here?</source>
        <translation>¿Borrar de aquí todo lo suyo?</translation>
    </message>
    <message>
        <source>Erase this phone</source>
        <translation>Borrar este teléfono</translation>
    </message>
    <message>
        <source>Nothing waits to be sent.</source>
        <translation>No queda nada por enviar.</translation>
    </message>
    <message>
        <source>This cannot be undone.</source>
        <translation>Esto no se puede deshacer.</translation>
    </message>
    <message>
        <source>What goes</source>
        <translation>Qué se va</translation>
    </message>
    <message>
        <source>Your programme, its photos and clips, your practices and messages, your settings and reminders: all that Newel keeps on this phone.</source>
        <translation>Su programa, sus fotos y vídeos, sus prácticas y mensajes, sus ajustes y avisos: todo lo que Newel guarda en este teléfono.</translation>
    </message>
    <message>
        <source>What was not sent to the clinic yet. It is lost.</source>
        <translation>Lo que aún no se envió a la clínica. Se pierde.</translation>
    </message>
    <message>
        <source>What stays</source>
        <translation>Qué se queda</translation>
    </message>
    <message>
        <source>The clinic keeps what has reached it. Ask the clinic if you want that erased, too.</source>
        <translation>La clínica conserva lo que le ha llegado. Pregunte a la clínica si quiere que también se borre.</translation>
    </message>
    <message>
        <source>Files that you saved from here yourself. You can delete them like any other file.</source>
        <translation>Los archivos que usted mismo guardó desde aquí. Puede borrarlos como cualquier otro archivo.</translation>
    </message>
    <message>
        <source>Afterwards</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>This phone belongs to nobody. To use Newel here again you need a new code from the clinic.</source>
        <translation>Este teléfono no es de nadie. Para volver a usar Newel aquí necesita un código nuevo de la clínica.</translation>
    </message>
    <message>
        <source>First save everything about me</source>
        <translation>Guardar antes todo lo mío</translation>
    </message>
    <message>
        <source>Erase this phone …</source>
        <translation>Borrar este teléfono …</translation>
    </message>
    <message>
        <source>No, keep it</source>
        <translation>No, conservarlo</translation>
    </message>
    <message>
        <source>Yes, erase everything</source>
        <translation>Sí, borrar todo</translation>
    </message>
</context>
<context>
    <name>FirstRunPage</name>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
</context>
<context>
    <name>GetReadyPage</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>These words are not in your language yet.</source>
        <translation>Estas palabras aún no están en su idioma.</translation>
    </message>
    <message>
        <source>Photo of the exercise, from your clinic</source>
        <translation>Foto del ejercicio, de su clínica</translation>
    </message>
    <message>
        <source>Support</source>
        <translation>Apoyo</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Tenga cuidado</translation>
    </message>
    <message>
        <source>Have ready</source>
        <translation>Tenga a mano</translation>
    </message>
    <message>
        <source>How you begin</source>
        <translation>Cómo se empieza</translation>
    </message>
    <message>
        <source>From your therapist</source>
        <translation>De su terapeuta</translation>
    </message>
    <message>
        <source>Then put the phone where you hear it. You need not look at it or touch it.</source>
        <translation>Ponga el teléfono donde lo oiga. No hace falta mirarlo ni tocarlo.</translation>
    </message>
    <message>
        <source>Leave this exercise out</source>
        <translation>Dejar este ejercicio</translation>
    </message>
    <message>
        <source>Finish for today</source>
        <translation>Terminar por hoy</translation>
    </message>
    <message>
        <source>Support is there: start</source>
        <translation>Tengo apoyo: empezar</translation>
    </message>
</context>
<context>
    <name>HelpPage</name>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>A quién llamar</translation>
    </message>
    <message>
        <source>After a fall</source>
        <translation>Después de una caída</translation>
    </message>
    <message>
        <source>Write to your therapist</source>
        <translation>Escribir a su terapeuta</translation>
    </message>
    <message>
        <source>Advice from your clinic</source>
        <translation>Consejos de su clínica</translation>
    </message>
</context>
<context>
    <name>HowItGoesPage</name>
    <message>
        <source>How it goes</source>
        <translation>Cómo va</translation>
    </message>
    <message>
        <source>Nothing to show yet. After your first practice you see here what you did and how it felt.</source>
        <translation>Aún no hay nada que mostrar. Después de su primera práctica verá aquí lo que hizo y cómo se sintió.</translation>
    </message>
    <message>
        <source>Pain after practice</source>
        <translation>Dolor después de practicar</translation>
    </message>
    <message>
        <source>0 is no pain, 10 the worst you can think of.</source>
        <translation>0 es sin dolor, 10 lo peor que pueda imaginar.</translation>
    </message>
    <message>
        <source>Effort</source>
        <translation>Esfuerzo</translation>
    </message>
    <message>
        <source>0 is no effort at all, 10 all you had.</source>
        <translation>0 es ningún esfuerzo, 10 todo lo que tenía.</translation>
    </message>
    <message>
        <source>What these numbers mean for you, your therapist can say.</source>
        <translation>Lo que estos números significan para usted se lo puede decir su terapeuta.</translation>
    </message>
    <message>
        <source>Earlier weeks</source>
        <translation>Semanas anteriores</translation>
    </message>
    <message>
        <source>Later weeks</source>
        <translation>Semanas siguientes</translation>
    </message>
    <message>
        <source>Prosthesis on</source>
        <translation>Prótesis puesta</translation>
    </message>
    <message>
        <source>Hours in a day.</source>
        <translation>Horas al día.</translation>
    </message>
    <message>
        <source>What your clinic measures</source>
        <translation>Lo que mide su clínica</translation>
    </message>
</context>
<context>
    <name>LanguagePage</name>
    <message>
        <source>Your language</source>
        <translation>Su idioma</translation>
    </message>
    <message>
        <source>Screens, voice and exercises use this language. An exercise that is not in it yet is shown in English.</source>
        <translation>Las pantallas, la voz y los ejercicios usan este idioma. Un ejercicio que aún no está en él se muestra en inglés.</translation>
    </message>
</context>
<context>
    <name>LeaveOutPage</name>
    <message>
        <source>Why leave it out?</source>
        <translation>¿Por qué lo deja?</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Newel</source>
        <translation>Newel</translation>
    </message>
</context>
<context>
    <name>NumberStepper</name>
    <message>
        <source>Less: %1</source>
        <translation>Menos: %1</translation>
    </message>
    <message>
        <source>More: %1</source>
        <translation>Más: %1</translation>
    </message>
</context>
<context>
    <name>OwnRecord</name>
    <message>
        <source>What Newel keeps about %1</source>
        <translation>Lo que Newel guarda sobre %1</translation>
    </message>
    <message>
        <source>Written by Newel on %1. What was told later was not timed.</source>
        <translation>Escrito por Newel el %1. Lo contado después no fue cronometrado.</translation>
    </message>
    <message>
        <source>Your clinic: %1, %2</source>
        <translation>Su clínica: %1, %2</translation>
    </message>
    <message>
        <source>What is not here: photos and clips, which are in Newel with your programme; and what the clinic keeps without this phone.</source>
        <translation>Lo que no está aquí: fotos y vídeos, que están en Newel con su programa; y lo que la clínica guarda aparte de este teléfono.</translation>
    </message>
    <message>
        <source>Programme %L1</source>
        <translation>Programa %L1</translation>
    </message>
    <message>
        <source>From %1, %2 to %3</source>
        <translation>De %1, del %2 al %3</translation>
    </message>
    <message>
        <source>Exercise</source>
        <translation>Ejercicio</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Cuánto</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>From your therapist</source>
        <translation>De su terapeuta</translation>
    </message>
    <message>
        <source>Nothing yet.</source>
        <translation>Nada todavía.</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>terminada</translation>
    </message>
    <message>
        <source>stopped for safety</source>
        <translation>parada por seguridad</translation>
    </message>
    <message>
        <source>stopped by the clinic</source>
        <translation>parada por la clínica</translation>
    </message>
    <message>
        <source>not that day</source>
        <translation>ese día no</translation>
    </message>
    <message>
        <source>cut off</source>
        <translation>cortada</translation>
    </message>
    <message>
        <source>stopped</source>
        <translation>parada</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>no hecho</translation>
    </message>
    <message>
        <source>%L1 of %L2</source>
        <translation>%L1 de %L2</translation>
    </message>
    <message>
        <source>told later</source>
        <translation>contado después</translation>
    </message>
    <message>
        <source>timed</source>
        <translation>cronometrado</translation>
    </message>
    <message>
        <source>What you did</source>
        <translation>Lo que hizo</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>Dolor</translation>
    </message>
    <message>
        <source>Effort</source>
        <translation>Esfuerzo</translation>
    </message>
    <message>
        <source>How known</source>
        <translation>Cómo se sabe</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Final</translation>
    </message>
    <message>
        <source>You</source>
        <translation>Usted</translation>
    </message>
    <message>
        <source>Messages</source>
        <translation>Mensajes</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Texto</translation>
    </message>
    <message>
        <source>On hold now</source>
        <translation>En pausa ahora</translation>
    </message>
    <message>
        <source>From %1, %2: %3</source>
        <translation>De %1, %2: %3</translation>
    </message>
    <message>
        <source>The rest</source>
        <translation>Lo demás</translation>
    </message>
    <message>
        <source>Facts about your body and home, each answer before a practice, and every other detail are in the other file that Newel can save, for other programs (JSON).</source>
        <translation>Los datos de su cuerpo y su casa, cada respuesta antes de una práctica y los demás detalles están en el otro archivo que Newel puede guardar, para otros programas (JSON).</translation>
    </message>
    <message>
        <source>Wearing time</source>
        <translation>Tiempo de uso</translation>
    </message>
    <message>
        <source>Put on</source>
        <translation>Puesta</translation>
    </message>
    <message>
        <source>Taken off</source>
        <translation>Quitada</translation>
    </message>
    <message>
        <source>Skin</source>
        <translation>Piel</translation>
    </message>
    <message>
        <source>How it was written down</source>
        <translation>Cómo se anotó</translation>
    </message>
    <message>
        <source>What the clinic measured</source>
        <translation>Lo que midió la clínica</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Medida</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
</context>
<context>
    <name>PageFrame</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
</context>
<context>
    <name>PainPage</name>
    <message>
        <source>Before you start</source>
        <translation>Antes de empezar</translation>
    </message>
    <message>
        <source>How much pain do you have right now?</source>
        <translation>¿Cuánto dolor tiene ahora mismo?</translation>
    </message>
    <message>
        <source>no pain</source>
        <translation>sin dolor</translation>
    </message>
    <message>
        <source>the worst you can think of</source>
        <translation>el peor que pueda imaginar</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
</context>
<context>
    <name>PairPage</name>
    <message>
        <source>Connect this phone to your clinic</source>
        <translation>Conecte este teléfono a su clínica</translation>
    </message>
    <message>
        <source>Address of the clinic</source>
        <translation>Dirección de la clínica</translation>
    </message>
    <message>
        <source>For example clinic.example:7443</source>
        <translation>Por ejemplo clinic.example:7443</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>8 letters and numbers</source>
        <translation>8 letras y números</translation>
    </message>
    <message>
        <source>Or paste the text of the QR code</source>
        <translation>O pegue el texto del código QR</translation>
    </message>
    <message>
        <source>Text of the QR code</source>
        <translation>Texto del código QR</translation>
    </message>
    <message>
        <source>It begins with newel:1</source>
        <translation>Empieza por newel:1</translation>
    </message>
    <message>
        <source>Connect with this text</source>
        <translation>Conectar con este texto</translation>
    </message>
    <message>
        <source>Newel is for people whose therapist has examined them and written them a programme. What it is and is not stands under Help.</source>
        <translation>Newel es para quien tiene un terapeuta que le ha examinado y le ha escrito un programa. Qué es y qué no es está en Ayuda.</translation>
    </message>
    <message>
        <source>Connecting …</source>
        <translation>Conectando …</translation>
    </message>
    <message>
        <source>Connect</source>
        <translation>Conectar</translation>
    </message>
    <message>
        <source>The clinic shows you a square, and beside it an address and a code. Point the camera at the square, or type both. They work once.</source>
        <translation>La clínica le muestra un cuadro, y al lado una dirección y un código. Apunte la cámara al cuadro, o escriba los dos. Sirven una vez.</translation>
    </message>
    <message>
        <source>Use the camera</source>
        <translation>Usar la cámara</translation>
    </message>
</context>
<context>
    <name>PairedPage</name>
    <message>
        <source>Hello %1</source>
        <translation>Hola, %1</translation>
    </message>
    <message>
        <source>This phone is now connected to %1.</source>
        <translation>Este teléfono ya está conectado a %1.</translation>
    </message>
    <message>
        <source>Look at the clinic&apos;s screen. Does it show the same signs?</source>
        <translation>Mire la pantalla de la clínica. ¿Muestra los mismos signos?</translation>
    </message>
    <message>
        <source>Yes, the same</source>
        <translation>Sí, los mismos</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>No, they differ</source>
        <translation>No, son otros</translation>
    </message>
</context>
<context>
    <name>Paper</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
</context>
<context>
    <name>Phrasing</name>
    <message numerus="yes">
        <source>%Ln second(s)</source>
        <translation>
            <numerusform>%Ln segundo</numerusform>
            <numerusform>%Ln segundos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s)</source>
        <translation>
            <numerusform>%Ln vez</numerusform>
            <numerusform>%Ln veces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln set(s) of %L1</source>
        <translation>
            <numerusform>%Ln serie de %L1</numerusform>
            <numerusform>%Ln series de %L1</numerusform>
        </translation>
    </message>
    <message>
        <source>, hold %1</source>
        <translation>, mantener %1</translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s) up and down</source>
        <translation>
            <numerusform>%Ln vez subir y bajar</numerusform>
            <numerusform>%Ln veces subir y bajar</numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message numerus="yes">
        <source>%Ln step(s)</source>
        <translation>
            <numerusform>%Ln peldaño</numerusform>
            <numerusform>%Ln peldaños</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s) there and back</source>
        <translation>
            <numerusform>%Ln vez ida y vuelta</numerusform>
            <numerusform>%Ln veces ida y vuelta</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln metre(s)</source>
        <translation>
            <numerusform>%Ln metro</numerusform>
            <numerusform>%Ln metros</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s) %1</source>
        <translation>
            <numerusform>%Ln vez %1</numerusform>
            <numerusform>%Ln veces %1</numerusform>
        </translation>
    </message>
    <message>
        <source>prosthesis off</source>
        <translation>sin prótesis</translation>
    </message>
    <message>
        <source>prosthesis on</source>
        <translation>con prótesis</translation>
    </message>
    <message>
        <source>%1, sound limb</source>
        <translation>%1, la sana</translation>
    </message>
    <message>
        <source>%1, prosthesis</source>
        <translation>%1, prótesis</translation>
    </message>
    <message>
        <source>%1, residual limb</source>
        <translation>%1, muñón</translation>
    </message>
    <message>
        <source>Pain</source>
        <translation>Dolor</translation>
    </message>
    <message>
        <source>Dizzy</source>
        <translation>Mareo</translation>
    </message>
    <message>
        <source>Unsteady</source>
        <translation>Inseguridad</translation>
    </message>
    <message>
        <source>The prosthesis</source>
        <translation>La prótesis</translation>
    </message>
    <message>
        <source>Tired</source>
        <translation>Cansancio</translation>
    </message>
    <message>
        <source>Interrupted</source>
        <translation>Me interrumpieron</translation>
    </message>
    <message>
        <source>Chest pain</source>
        <translation>Dolor en el pecho</translation>
    </message>
    <message>
        <source>Short of breath</source>
        <translation>Me falta el aire</translation>
    </message>
    <message>
        <source>I fell</source>
        <translation>Me caí</translation>
    </message>
    <message>
        <source>My skin</source>
        <translation>La piel</translation>
    </message>
    <message>
        <source>The clinic said stop</source>
        <translation>La clínica dijo que pare</translation>
    </message>
    <message>
        <source>Sudden weakness, or trouble with speech</source>
        <translation>Debilidad de golpe, o no puedo hablar bien</translation>
    </message>
    <message>
        <source>Swollen limb</source>
        <translation>Pierna hinchada</translation>
    </message>
    <message>
        <source>No time</source>
        <translation>Sin tiempo</translation>
    </message>
    <message>
        <source>I feel ill</source>
        <translation>Me siento mal</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Otra cosa</translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s) a week</source>
        <translation>
            <numerusform>%Ln vez a la semana</numerusform>
            <numerusform>%Ln veces a la semana</numerusform>
        </translation>
    </message>
    <message>
        <source>every day</source>
        <translation>cada día</translation>
    </message>
    <message numerus="yes">
        <source>%Ln minute(s)</source>
        <translation>
            <numerusform>%Ln minuto</numerusform>
            <numerusform>%Ln minutos</numerusform>
        </translation>
    </message>
    <message>
        <source>today at %1</source>
        <translation>hoy a las %1</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 a las %2</translation>
    </message>
    <message>
        <source>The clinic cannot be reached at the moment.</source>
        <translation>No se puede contactar con la clínica en este momento.</translation>
    </message>
    <message>
        <source>The date on this phone seems wrong. Please set it.</source>
        <translation>La fecha de este teléfono parece equivocada. Por favor, ajústela.</translation>
    </message>
    <message>
        <source>The clinic ended this phone&apos;s access. Call the clinic.</source>
        <translation>La clínica ha cerrado el acceso de este teléfono. Llame a la clínica.</translation>
    </message>
    <message>
        <source>The clinic&apos;s computer could not be trusted. Call the clinic.</source>
        <translation>No se pudo confiar en el ordenador de la clínica. Llame a la clínica.</translation>
    </message>
    <message>
        <source>This phone&apos;s memory is full. Please make room.</source>
        <translation>La memoria de este teléfono está llena. Por favor, haga sitio.</translation>
    </message>
    <message>
        <source>Contact with the clinic failed. The phone tries again by itself.</source>
        <translation>Falló el contacto con la clínica. El teléfono lo intenta de nuevo solo.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln record(s) kept on this phone, will be sent.</source>
        <translation>
            <numerusform>%Ln registro guardado en este teléfono, se enviará.</numerusform>
            <numerusform>%Ln registros guardados en este teléfono, se enviarán.</numerusform>
        </translation>
    </message>
    <message>
        <source>All has reached the clinic. Last contact %1.</source>
        <translation>Todo ha llegado a la clínica. Último contacto: %1.</translation>
    </message>
    <message>
        <source>No contact with the clinic yet.</source>
        <translation>Aún no ha habido contacto con la clínica.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln record(s) could not be taken by the clinic and stay on this phone. Call the clinic.</source>
        <translation>
            <numerusform>La clínica no pudo aceptar %Ln registro, que queda en este teléfono. Llame a la clínica.</numerusform>
            <numerusform>La clínica no pudo aceptar %Ln registros, que quedan en este teléfono. Llame a la clínica.</numerusform>
        </translation>
    </message>
    <message>
        <source>This phone&apos;s memory is full, so nothing can be kept. Please make room, then try again.</source>
        <translation>La memoria de este teléfono está llena y no se puede guardar nada. Haga sitio e inténtelo otra vez.</translation>
    </message>
    <message>
        <source>A record on this phone cannot be read. Call the clinic, and do not erase the phone.</source>
        <translation>No se puede leer un registro de este teléfono. Llame a la clínica y no borre el teléfono.</translation>
    </message>
    <message>
        <source>Something went wrong and nothing was changed. Try again; if it stays, call the clinic. (%1)</source>
        <translation>Algo falló y no se cambió nada. Inténtelo otra vez; si sigue igual, llame a la clínica. (%1)</translation>
    </message>
    <message>
        <source>at any time of day</source>
        <translation>a cualquier hora del día</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
</context>
<context>
    <name>PracticePaused</name>
    <message>
        <source>Paused</source>
        <translation>En pausa</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Say it again</source>
        <translation>Repetir</translation>
    </message>
    <message>
        <source>Leave this exercise out</source>
        <translation>Dejar este ejercicio</translation>
    </message>
    <message>
        <source>Go on, slower</source>
        <translation>Seguir, más despacio</translation>
    </message>
</context>
<context>
    <name>PracticeView</name>
    <message>
        <source>Exercise %L1 of %L2</source>
        <translation>Ejercicio %L1 de %L2</translation>
    </message>
    <message>
        <source>%L1 of %L2</source>
        <translation>%L1 de %L2</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Done, go on</source>
        <translation>Hecho, seguir</translation>
    </message>
    <message>
        <source>Longer rest</source>
        <translation>Más descanso</translation>
    </message>
    <message>
        <source>Go on now</source>
        <translation>Seguir ya</translation>
    </message>
</context>
<context>
    <name>ProgrammePage</name>
    <message>
        <source>What is new</source>
        <translation>Novedades</translation>
    </message>
    <message>
        <source>For all exercises</source>
        <translation>Para todos los ejercicios</translation>
    </message>
    <message>
        <source>These words are not in your language yet.</source>
        <translation>Estas palabras aún no están en su idioma.</translation>
    </message>
    <message>
        <source>Photo of the exercise, from your clinic</source>
        <translation>Foto del ejercicio, de su clínica</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>From your therapist: %1</source>
        <translation>De su terapeuta: %1</translation>
    </message>
    <message>
        <source>How you begin</source>
        <translation>Cómo se empieza</translation>
    </message>
    <message>
        <source>Done well</source>
        <translation>Bien hecho</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Tenga cuidado</translation>
    </message>
    <message>
        <source>Stop if</source>
        <translation>Pare si</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Consejos</translation>
    </message>
    <message>
        <source>Wearing time</source>
        <translation>Tiempo de uso</translation>
    </message>
    <message>
        <source>See and tell</source>
        <translation>Ver y anotar</translation>
    </message>
    <message>
        <source>I did this away from the phone</source>
        <translation>Lo hice sin el teléfono</translation>
    </message>
</context>
<context>
    <name>QuestionPage</name>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
</context>
<context>
    <name>RailList</name>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>on hold</source>
        <translation>suspendido</translation>
    </message>
    <message>
        <source>%L1 min</source>
        <translation>%L1 min</translation>
    </message>
</context>
<context>
    <name>RatingPage</name>
    <message>
        <source>How hard was it?</source>
        <translation>¿Cuánto le costó?</translation>
    </message>
    <message>
        <source>How much pain do you have now?</source>
        <translation>¿Cuánto dolor tiene ahora?</translation>
    </message>
    <message>
        <source>no pain</source>
        <translation>sin dolor</translation>
    </message>
    <message>
        <source>the worst you can think of</source>
        <translation>el peor que pueda imaginar</translation>
    </message>
    <message>
        <source>no effort at all</source>
        <translation>ningún esfuerzo</translation>
    </message>
    <message>
        <source>all you had</source>
        <translation>todo lo que pudo</translation>
    </message>
    <message>
        <source>Back to pain</source>
        <translation>Volver al dolor</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
</context>
<context>
    <name>RemindersPage</name>
    <message>
        <source>Reminders</source>
        <translation>Avisos</translation>
    </message>
    <message>
        <source>A short note when something is due, so that you need not keep it in mind. The note does not say what Newel is for: others may see your screen.</source>
        <translation>Una nota corta cuando toca algo, para que no tenga que recordarlo. La nota no dice para qué es Newel: otras personas pueden ver su pantalla.</translation>
    </message>
    <message>
        <source>Remind me</source>
        <translation>Avíseme</translation>
    </message>
    <message>
        <source>No reminder can be shown</source>
        <translation>No se puede mostrar ningún aviso</translation>
    </message>
    <message>
        <source>At what time</source>
        <translation>A qué hora</translation>
    </message>
    <message>
        <source>For what is due %1</source>
        <translation>Para lo que toca %1</translation>
    </message>
    <message>
        <source>Quiet hours</source>
        <translation>Horas de silencio</translation>
    </message>
    <message>
        <source>There are none: a reminder may come at any hour.</source>
        <translation>No hay: un aviso puede llegar a cualquier hora.</translation>
    </message>
    <message>
        <source>No reminder comes from %1 to %2.</source>
        <translation>No llega ningún aviso de %1 a %2.</translation>
    </message>
    <message>
        <source>Quiet from</source>
        <translation>Silencio desde</translation>
    </message>
    <message>
        <source>Quiet until</source>
        <translation>Silencio hasta</translation>
    </message>
    <message>
        <source>If you press Later</source>
        <translation>Si pulsa Más tarde</translation>
    </message>
    <message>
        <source>Remind me again in</source>
        <translation>Avisarme otra vez en</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>After three reminders in a row without an answer, only one a day comes, until you press one or open Newel.</source>
        <translation>Tras tres avisos seguidos sin respuesta llega solo uno al día, hasta que pulse uno o abra Newel.</translation>
    </message>
</context>
<context>
    <name>ScalePicker</name>
    <message>
        <source>0 is %1. 10 is %2.</source>
        <translation>0 es %1. 10 es %2.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>ScanPage</name>
    <message>
        <source>Point at the square</source>
        <translation>Apunte al cuadro</translation>
    </message>
    <message>
        <source>What the camera sees</source>
        <translation>Lo que ve la cámara</translation>
    </message>
    <message>
        <source>This square is not from a clinic. Look for the one under “Pair a phone”.</source>
        <translation>Este cuadro no es de una clínica. Busque el que está bajo «Vincular un teléfono» («Pair a phone»).</translation>
    </message>
    <message>
        <source>Hold the phone so that the square on the clinic&apos;s screen is inside the frame. It is read by itself.</source>
        <translation>Sostenga el teléfono de modo que el cuadro de la pantalla de la clínica quede dentro del marco. Se lee solo.</translation>
    </message>
    <message>
        <source>Nothing that the camera sees is kept or sent.</source>
        <translation>Nada de lo que ve la cámara se guarda ni se envía.</translation>
    </message>
    <message>
        <source>Type the code instead</source>
        <translation>Escribir el código</translation>
    </message>
</context>
<context>
    <name>SettingsMine</name>
    <message>
        <source>Reminders</source>
        <translation>Avisos</translation>
    </message>
    <message>
        <source>When to remind me</source>
        <translation>Cuándo avisarme</translation>
    </message>
    <message>
        <source>What this phone keeps about you</source>
        <translation>Lo que este teléfono guarda de usted</translation>
    </message>
    <message>
        <source>Save everything about me</source>
        <translation>Guardar todo lo mío</translation>
    </message>
    <message>
        <source>Erase this phone …</source>
        <translation>Borrar este teléfono …</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Size of text</source>
        <translation>Tamaño del texto</translation>
    </message>
    <message>
        <source>Say the cues aloud</source>
        <translation>Decir las indicaciones en voz alta</translation>
    </message>
    <message>
        <source>Tones are heard either way.</source>
        <translation>Los tonos se oyen de todos modos.</translation>
    </message>
    <message>
        <source>Light or dark</source>
        <translation>Claro u oscuro</translation>
    </message>
    <message>
        <source>As the phone</source>
        <translation>Como el teléfono</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>Pictures of the exercises</source>
        <translation>Dibujos de los ejercicios</translation>
    </message>
    <message>
        <source>Still pictures, no movement</source>
        <translation>Dibujos fijos, sin movimiento</translation>
    </message>
    <message>
        <source>The figure goes from pose to pose.</source>
        <translation>La figura pasa de una postura a otra.</translation>
    </message>
    <message>
        <source>How you are drawn</source>
        <translation>Cómo se le dibuja</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Check the sound</source>
        <translation>Probar el sonido</translation>
    </message>
    <message>
        <source>More contrast</source>
        <translation>Más contraste</translation>
    </message>
    <message>
        <source>Stronger colours, for eyes that need them.</source>
        <translation>Colores más fuertes, para ojos que los necesitan.</translation>
    </message>
    <message>
        <source>What Newel is, and is not</source>
        <translation>Qué es Newel y qué no es</translation>
    </message>
    <message>
        <source>From the first start</source>
        <translation>Del primer arranque</translation>
    </message>
    <message>
        <source>How large should words be?</source>
        <translation>¿Qué tamaño de letra prefiere?</translation>
    </message>
    <message>
        <source>May the phone remind you?</source>
        <translation>¿Puede avisarle el teléfono?</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>A quién llamar</translation>
    </message>
    <message>
        <source>Vibrate with every tone</source>
        <translation>Vibrar con cada tono</translation>
    </message>
    <message>
        <source>For a phone you can feel, in a pocket or in your hand.</source>
        <translation>Para un teléfono que se pueda sentir, en el bolsillo o en la mano.</translation>
    </message>
    <message>
        <source>On now, because the phone asks for it everywhere.</source>
        <translation>Activado ahora, porque el teléfono lo pide para todo.</translation>
    </message>
</context>
<context>
    <name>SoundCheckPage</name>
    <message>
        <source>Can you hear the phone?</source>
        <translation>¿Oye el teléfono?</translation>
    </message>
    <message>
        <source>While you practise you look at the floor, not at the phone. A tone and a voice tell you what comes next.</source>
        <translation>Mientras practica mira al suelo, no al teléfono. Un tono y una voz le dicen qué viene después.</translation>
    </message>
    <message>
        <source>Play it again</source>
        <translation>Oírlo otra vez</translation>
    </message>
    <message>
        <source>Play a tone and the voice</source>
        <translation>Oír un tono y la voz</translation>
    </message>
    <message>
        <source>Did you hear it?</source>
        <translation>¿Lo ha oído?</translation>
    </message>
    <message>
        <source>Yes, tone and voice</source>
        <translation>Sí, el tono y la voz</translation>
    </message>
    <message>
        <source>Only the tone</source>
        <translation>Solo el tono</translation>
    </message>
    <message>
        <source>No, nothing</source>
        <translation>No, nada</translation>
    </message>
    <message>
        <source>Good. You can put the phone down while you practise.</source>
        <translation>Bien. Puede dejar el teléfono mientras practica.</translation>
    </message>
    <message>
        <source>The voice cannot be heard</source>
        <translation>La voz no se oye</translation>
    </message>
    <message>
        <source>Nothing can be heard</source>
        <translation>No se oye nada</translation>
    </message>
    <message>
        <source>Every word is on the screen as well, and the tones tell when to change. Put the phone where you can read it.</source>
        <translation>Cada palabra está también en la pantalla, y los tonos dicen cuándo cambiar. Ponga el teléfono donde pueda leerlo.</translation>
    </message>
    <message>
        <source>Turn the sound up with the keys at the side, and take the phone off silent. If you use headphones or a hearing aid, see that it is connected. Then play it again. Every word is on the screen as well.</source>
        <translation>Suba el sonido con las teclas del lado y quite el silencio. Si usa auriculares o audífono, mire que estén conectados. Después, óigalo otra vez. Cada palabra está también en la pantalla.</translation>
    </message>
</context>
<context>
    <name>StopButton</name>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
</context>
<context>
    <name>TakeAlongPage</name>
    <message>
        <source>Writing the file …</source>
        <translation>Escribiendo el archivo …</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Guardado</translation>
    </message>
    <message>
        <source>Nothing was saved</source>
        <translation>No se guardó nada</translation>
    </message>
    <message>
        <source>Save everything about me</source>
        <translation>Guardar todo lo mío</translation>
    </message>
    <message>
        <source>Newel writes what it keeps about you into a file that is yours: your programme, what you did and felt, messages.</source>
        <translation>Newel escribe lo que guarda de usted en un archivo que es suyo: su programa, lo que hizo y sintió, los mensajes.</translation>
    </message>
    <message>
        <source>The file is not locked</source>
        <translation>El archivo no está protegido</translation>
    </message>
    <message>
        <source>Whoever opens it can read it. Keep it where only you can get at it.</source>
        <translation>Quien lo abra puede leerlo. Guárdelo donde solo usted tenga acceso.</translation>
    </message>
    <message>
        <source>Save to read and print (PDF)</source>
        <translation>Guardar para leer e imprimir (PDF)</translation>
    </message>
    <message>
        <source>Save for other programs (JSON)</source>
        <translation>Guardar para otros programas (JSON)</translation>
    </message>
</context>
<context>
    <name>TellLaterPage</name>
    <message>
        <source>What did you do away from the phone?</source>
        <translation>¿Qué hizo sin el teléfono?</translation>
    </message>
    <message>
        <source>How much of it did you do?</source>
        <translation>¿Cuánto hizo?</translation>
    </message>
    <message>
        <source>How much pain did you have afterwards?</source>
        <translation>¿Cuánto dolor tuvo después?</translation>
    </message>
    <message>
        <source>How hard was it?</source>
        <translation>¿Cuánto le costó?</translation>
    </message>
    <message>
        <source>Did anything happen?</source>
        <translation>¿Pasó algo?</translation>
    </message>
    <message>
        <source>Please read this now</source>
        <translation>Lea esto ahora</translation>
    </message>
    <message>
        <source>Written down</source>
        <translation>Anotado</translation>
    </message>
    <message>
        <source>From the last seven days. The clinic sees that you told it later and that the phone did not time it.</source>
        <translation>De los últimos siete días. La clínica ve que lo contó después y que el teléfono no lo cronometró.</translation>
    </message>
    <message>
        <source>All that was due in the last seven days is written down already.</source>
        <translation>Todo lo que tocaba en los últimos siete días ya está anotado.</translation>
    </message>
    <message>
        <source>All of it</source>
        <translation>Todo</translation>
    </message>
    <message>
        <source>Most of it</source>
        <translation>Casi todo</translation>
    </message>
    <message>
        <source>About half</source>
        <translation>Más o menos la mitad</translation>
    </message>
    <message>
        <source>A little of it</source>
        <translation>Un poco</translation>
    </message>
    <message>
        <source>no pain</source>
        <translation>sin dolor</translation>
    </message>
    <message>
        <source>the worst you can think of</source>
        <translation>el peor que pueda imaginar</translation>
    </message>
    <message>
        <source>no effort at all</source>
        <translation>ningún esfuerzo</translation>
    </message>
    <message>
        <source>all you had</source>
        <translation>todo lo que pudo</translation>
    </message>
    <message>
        <source>%1. Written down as told later, not timed.</source>
        <translation>%1. Anotado como contado después, sin cronometrar.</translation>
    </message>
    <message>
        <source>Tell of another one</source>
        <translation>Contar otro</translation>
    </message>
    <message>
        <source>No, nothing</source>
        <translation>No, nada</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>Lo he leído</translation>
    </message>
    <message>
        <source>Back to today</source>
        <translation>Volver a hoy</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
</context>
<context>
    <name>TextSizePage</name>
    <message>
        <source>Stand up slowly, and hold on with both hands.</source>
        <translation>Póngase de pie despacio y sujétese con las dos manos.</translation>
    </message>
    <message>
        <source>How large should words be?</source>
        <translation>¿Qué tamaño de letra prefiere?</translation>
    </message>
    <message>
        <source>Size of text</source>
        <translation>Tamaño del texto</translation>
    </message>
    <message>
        <source>This is how it looks:</source>
        <translation>Así se ve:</translation>
    </message>
    <message>
        <source>Read it to me</source>
        <translation>Léamelo</translation>
    </message>
    <message>
        <source>More contrast</source>
        <translation>Más contraste</translation>
    </message>
    <message>
        <source>Stronger colours, for eyes that need them.</source>
        <translation>Colores más fuertes, para ojos que los necesitan.</translation>
    </message>
</context>
<context>
    <name>TodayPage</name>
    <message>
        <source>Questions? Call %1: %2</source>
        <translation>¿Preguntas? Llame a %1: %2</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>Lo he leído</translation>
    </message>
    <message>
        <source>New: %1</source>
        <translation>Nuevo: %1</translation>
    </message>
    <message>
        <source>See what is new</source>
        <translation>Ver las novedades</translation>
    </message>
    <message>
        <source>To read today</source>
        <translation>Para leer hoy</translation>
    </message>
    <message>
        <source>My programme</source>
        <translation>Mi programa</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Empezar</translation>
    </message>
    <message>
        <source>I have a new code</source>
        <translation>Tengo un código nuevo</translation>
    </message>
    <message>
        <source>Have ready</source>
        <translation>Tenga a mano</translation>
    </message>
    <message>
        <source>How it goes</source>
        <translation>Cómo va</translation>
    </message>
    <message>
        <source>I did this away from the phone</source>
        <translation>Lo hice sin el teléfono</translation>
    </message>
</context>
<context>
    <name>TroubleWindow</name>
    <message>
        <source>Newel</source>
        <translation>Newel</translation>
    </message>
</context>
<context>
    <name>UnfinishedPage</name>
    <message>
        <source>Go on where you stopped?</source>
        <translation>¿Seguir donde paró?</translation>
    </message>
    <message>
        <source>All you did is kept. If you go on, the step you were in is done again from its start.</source>
        <translation>Todo lo que hizo está guardado. Si sigue, el paso en que estaba se repite desde el principio.</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Close it</source>
        <translation>Cerrarla</translation>
    </message>
</context>
<context>
    <name>VerdictPage</name>
    <message>
        <source>Stop now</source>
        <translation>Pare ahora</translation>
    </message>
    <message>
        <source>Please note</source>
        <translation>Tenga en cuenta</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>Lo he leído</translation>
    </message>
</context>
<context>
    <name>WearCard</name>
    <message>
        <source>Wearing time</source>
        <translation>Tiempo de uso</translation>
    </message>
</context>
<context>
    <name>WearPage</name>
    <message>
        <source>Wearing time</source>
        <translation>Tiempo de uso</translation>
    </message>
    <message>
        <source>Take it off now</source>
        <translation>Quítesela ahora</translation>
    </message>
    <message>
        <source>Longer than planned can hurt the skin.</source>
        <translation>Más de lo previsto puede dañar la piel.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln minute(s) left</source>
        <translation>
            <numerusform>queda %Ln minuto</numerusform>
            <numerusform>quedan %Ln minutos</numerusform>
        </translation>
    </message>
    <message>
        <source>Taken off</source>
        <translation>Quitada</translation>
    </message>
    <message>
        <source>Put on</source>
        <translation>Puesta</translation>
    </message>
    <message>
        <source>I have put it on all the same</source>
        <translation>Me la he puesto de todos modos</translation>
    </message>
    <message>
        <source>Yes, it was gone</source>
        <translation>Sí, ya no estaba roja</translation>
    </message>
    <message>
        <source>Yes, it is gone</source>
        <translation>Sí, ya no está roja</translation>
    </message>
    <message>
        <source>No, still red</source>
        <translation>No, sigue roja</translation>
    </message>
    <message>
        <source>The last two weeks</source>
        <translation>Las últimas dos semanas</translation>
    </message>
    <message>
        <source>I have taken it off</source>
        <translation>Me la he quitado</translation>
    </message>
    <message>
        <source>That is what I see</source>
        <translation>Esto es lo que veo</translation>
    </message>
    <message>
        <source>I have put it on</source>
        <translation>Me la he puesto</translation>
    </message>
</context>
<context>
    <name>WearWords</name>
    <message numerus="yes">
        <source>%Ln hour(s)</source>
        <translation>
            <numerusform>%Ln hora</numerusform>
            <numerusform>%Ln horas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>hours, minutes</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>as long as you like</source>
        <translation>todo el tiempo que quiera</translation>
    </message>
    <message>
        <source>once a day for %1</source>
        <translation>una vez al día durante %1</translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s) a day for %1</source>
        <translation>
            <numerusform>una vez al día durante %1</numerusform>
            <numerusform>%Ln veces al día durante %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing: the skin looks as always</source>
        <translation>Nada: la piel está como siempre</translation>
    </message>
    <message>
        <source>Red skin</source>
        <translation>Piel roja</translation>
    </message>
    <message>
        <source>A new bruise</source>
        <translation>Un moratón nuevo</translation>
    </message>
    <message>
        <source>A blister</source>
        <translation>Una ampolla</translation>
    </message>
    <message>
        <source>Open skin</source>
        <translation>Piel abierta</translation>
    </message>
    <message>
        <source>Fluid comes out</source>
        <translation>Sale líquido</translation>
    </message>
    <message>
        <source>Pain that grows</source>
        <translation>Dolor que aumenta</translation>
    </message>
    <message>
        <source>Swelling, or it does not go on any more</source>
        <translation>Hinchazón, o ya no entra</translation>
    </message>
    <message>
        <source>Numb, cold or another colour</source>
        <translation>Dormida, fría o de otro color</translation>
    </message>
    <message>
        <source>Fever</source>
        <translation>Fiebre</translation>
    </message>
    <message>
        <source>Red, gone after %1</source>
        <translation>Roja, normal tras %1</translation>
    </message>
    <message>
        <source>Red, still there after %1</source>
        <translation>Roja, seguía así tras %1</translation>
    </message>
</context>
<context>
    <name>WeekGrid</name>
    <message>
        <source>What the signs mean</source>
        <translation>Qué significan los signos</translation>
    </message>
    <message>
        <source>all done</source>
        <translation>todo hecho</translation>
    </message>
    <message>
        <source>done in part</source>
        <translation>hecho en parte</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>no hecho</translation>
    </message>
    <message>
        <source>excused: nothing was expected of you</source>
        <translation>excusado: no se esperaba nada de usted</translation>
    </message>
    <message>
        <source>still to come</source>
        <translation>aún por venir</translation>
    </message>
    <message>
        <source>not known: this phone was not there yet</source>
        <translation>no se sabe: este teléfono aún no estaba</translation>
    </message>
    <message>
        <source>An empty box: nothing was due that day.</source>
        <translation>Una casilla vacía: ese día no tocaba nada.</translation>
    </message>
</context>
<context>
    <name>WhatHappenedPage</name>
    <message>
        <source>Stopped</source>
        <translation>Parado</translation>
    </message>
    <message>
        <source>What happened?</source>
        <translation>¿Qué pasó?</translation>
    </message>
    <message>
        <source>In danger? Call %1 first.</source>
        <translation>¿En peligro? Llame primero al %1.</translation>
    </message>
</context>
<context>
    <name>WhatNewelIs</name>
    <message>
        <source>What Newel is</source>
        <translation>Qué es Newel</translation>
    </message>
    <message>
        <source>Newel is for adults who use a leg prosthesis and whose therapist has examined them, taught them the exercises and signed the programme. It shows the programme, leads and times practice at home, keeps what you did and felt, and sends that to the clinic.</source>
        <translation>Newel es para personas adultas que usan una prótesis de pierna y a quienes su terapeuta ha examinado, ha enseñado los ejercicios y ha firmado el programa. Muestra el programa, guía y mide la práctica en casa, guarda lo que hizo y sintió, y lo envía a la clínica.</translation>
    </message>
    <message>
        <source>What Newel is not</source>
        <translation>Qué no es Newel</translation>
    </message>
    <message>
        <source>It does not examine you, name an illness, choose exercises or make them harder. Nobody watches while you practise, and it does not call for help. It is not for first steps with a new prosthesis without someone beside you, nor for people who were told not to exercise alone.</source>
        <translation>No le examina, no pone nombre a una enfermedad, no elige ejercicios ni los hace más difíciles. Nadie mira mientras practica, y no pide ayuda. No es para los primeros pasos con una prótesis nueva sin alguien al lado, ni para quien no debe hacer ejercicio a solas.</translation>
    </message>
    <message>
        <source>Please remember</source>
        <translation>Recuerde</translation>
    </message>
    <message>
        <source>This is not an emergency service. In danger, call the emergency number.</source>
        <translation>Esto no es un servicio de emergencias. En peligro, llame al número de emergencias.</translation>
    </message>
    <message>
        <source>Nobody reads messages at once.</source>
        <translation>Nadie lee los mensajes al momento.</translation>
    </message>
    <message>
        <source>Stop if something feels wrong.</source>
        <translation>Pare si algo no va bien.</translation>
    </message>
    <message>
        <source>What your therapist or doctor says counts more than this phone.</source>
        <translation>Lo que diga su terapeuta o su médico vale más que este teléfono.</translation>
    </message>
    <message>
        <source>With no network, what you see may be old.</source>
        <translation>Sin red, lo que ve puede ser antiguo.</translation>
    </message>
    <message>
        <source>Local law and your clinic&apos;s rules decide.</source>
        <translation>Deciden las leyes del lugar y las normas de su clínica.</translation>
    </message>
    <message>
        <source>This is free software and comes with no warranty.</source>
        <translation>Este es un programa libre y viene sin garantía.</translation>
    </message>
</context>
<context>
    <name>WhoToCall</name>
    <message>
        <source>Call the emergency number now</source>
        <translation>Llame ya al número de emergencias</translation>
    </message>
    <message>
        <source>Emergency number</source>
        <translation>Número de emergencias</translation>
    </message>
    <message>
        <source>This phone does not know your clinic yet. In danger, call your local emergency number.</source>
        <translation>Este teléfono aún no conoce su clínica. En peligro, llame al número de emergencias de su zona.</translation>
    </message>
    <message>
        <source>Call %1</source>
        <translation>Llamar al %1</translation>
    </message>
    <message>
        <source>Call the clinic</source>
        <translation>Llamar a la clínica</translation>
    </message>
    <message>
        <source>This device cannot dial. Take a phone and dial the number above.</source>
        <translation>Este aparato no puede llamar. Tome un teléfono y marque el número de arriba.</translation>
    </message>
</context>
<context>
    <name>WritePage</name>
    <message>
        <source>Write to your therapist</source>
        <translation>Escribir a su terapeuta</translation>
    </message>
    <message>
        <source>Nobody reads this at once</source>
        <translation>Nadie lee esto al momento</translation>
    </message>
    <message>
        <source>With pain, a wound or a fall, call instead.</source>
        <translation>Con dolor, una herida o una caída, llame.</translation>
    </message>
    <message>
        <source>Your words</source>
        <translation>Su texto</translation>
    </message>
    <message>
        <source>Kept. It goes to the clinic as soon as it can be reached.</source>
        <translation>Guardado. Va a la clínica en cuanto se pueda llegar a ella.</translation>
    </message>
    <message>
        <source>Written before</source>
        <translation>Escrito antes</translation>
    </message>
    <message>
        <source>Send</source>
        <translation>Enviar</translation>
    </message>
</context>
<context>
    <name>main</name>
    <message>
        <source>This phone has no safe place for a key</source>
        <translation>Este teléfono no tiene un lugar seguro para una llave</translation>
    </message>
    <message>
        <source>Newel locks what it keeps about you with a key. This phone has no place of its own for keys, so the key would lie in a file beside your data. Whoever gets at this phone&apos;s storage could then read it.</source>
        <translation>Newel cierra con llave lo que guarda de usted. Este teléfono no tiene un lugar propio para llaves, así que la llave quedaría en un archivo junto a sus datos. Quien llegue a la memoria de este teléfono podría leerlos.</translation>
    </message>
    <message>
        <source>Keep the key in a file</source>
        <translation>Guardar la llave en un archivo</translation>
    </message>
    <message>
        <source>Do not use Newel here</source>
        <translation>No usar Newel aquí</translation>
    </message>
    <message>
        <source>What Newel keeps on this phone is locked, and its key is not there. Unlock the phone&apos;s place for keys and open Newel again, or phone your clinic. Nothing was changed.</source>
        <translation>Lo que Newel guarda en este teléfono está cerrado y su llave no está. Abra el lugar de llaves del teléfono y vuelva a abrir Newel, o llame a su clínica. No se cambió nada.</translation>
    </message>
    <message>
        <source>What Newel keeps on this phone cannot be opened. Phone your clinic. Nothing was deleted.</source>
        <translation>No se puede abrir lo que Newel guarda en este teléfono. Llame a su clínica. No se borró nada.</translation>
    </message>
    <message>
        <source>Newel cannot open</source>
        <translation>Newel no puede abrirse</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Test clock: the date is shifted</source>
        <translation>Reloj de prueba: la fecha está cambiada</translation>
    </message>
</context>
<context>
    <name>newel::home::AdviceModel</name>
    <message>
        <source>Written down and sent to the clinic: %1</source>
        <translation>Anotado y enviado a la clínica: %1</translation>
    </message>
</context>
<context>
    <name>newel::home::AppModel</name>
    <message>
        <source>Arrived: %1.</source>
        <translation>Llegó: %1.</translation>
    </message>
    <message>
        <source>Arrived.</source>
        <translation>Llegó.</translation>
    </message>
    <message>
        <source>The clinic&apos;s computer could not take it. It stays on this phone. Call the clinic.</source>
        <translation>El ordenador de la clínica no pudo aceptarlo. Se queda en este teléfono. Llame a la clínica.</translation>
    </message>
    <message>
        <source>On its way. It is kept on this phone until the clinic has it.</source>
        <translation>En camino. Se guarda en este teléfono hasta que la clínica lo tenga.</translation>
    </message>
</context>
<context>
    <name>newel::home::FirstRunModel</name>
    <message>
        <source>Step %L1 of %L2</source>
        <translation>Paso %L1 de %L2</translation>
    </message>
</context>
<context>
    <name>newel::home::HistoryModel</name>
    <message>
        <source>Of what was due until now this phone knows nothing yet.</source>
        <translation>De lo que tocaba hasta ahora, este teléfono aún no sabe nada.</translation>
    </message>
    <message>
        <source>Done: %L1 of %L2 that were due, %L3 of them in part.</source>
        <translation>Hechos: %L1 de %L2 que tocaban, %L3 de ellos en parte.</translation>
    </message>
    <message>
        <source>nothing due</source>
        <translation>no tocaba nada</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>No number was given in these weeks.</source>
        <translation>En estas semanas no se dio ningún número.</translation>
    </message>
    <message>
        <source>Last: %L1, on %2.</source>
        <translation>Último: %L1, el %2.</translation>
    </message>
    <message>
        <source>Always %L1.</source>
        <translation>Siempre %L1.</translation>
    </message>
    <message>
        <source>Between %L1 and %L2.</source>
        <translation>Entre %L1 y %L2.</translation>
    </message>
    <message>
        <source>Done: %L1 of %L2 that were due.</source>
        <translation>Hecho: %L1 de %L2 que tocaban.</translation>
    </message>
    <message>
        <source>done: %L1</source>
        <translation>hecho: %L1</translation>
    </message>
    <message>
        <source>in part: %L1</source>
        <translation>en parte: %L1</translation>
    </message>
    <message>
        <source>not done: %L1</source>
        <translation>no hecho: %L1</translation>
    </message>
    <message>
        <source>excused: %L1</source>
        <translation>excusado: %L1</translation>
    </message>
    <message>
        <source>to come: %L1</source>
        <translation>por venir: %L1</translation>
    </message>
    <message>
        <source>not known: %L1</source>
        <translation>no se sabe: %L1</translation>
    </message>
</context>
<context>
    <name>newel::home::MessagesModel</name>
    <message>
        <source>You, %1</source>
        <translation>Usted, %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>arrived at the clinic</source>
        <translation>llegó a la clínica</translation>
    </message>
    <message>
        <source>not sent yet</source>
        <translation>aún sin enviar</translation>
    </message>
    <message>
        <source>This is too long to send. Please write less.</source>
        <translation>Es demasiado largo para enviarlo. Escriba menos.</translation>
    </message>
</context>
<context>
    <name>newel::home::PairModel</name>
    <message>
        <source>The clinic does not know this code: it was used already, or it is too old. Ask for a new one.</source>
        <translation>La clínica no conoce este código: ya se usó, o es demasiado antiguo. Pida uno nuevo.</translation>
    </message>
    <message>
        <source>Too many wrong codes. Wait a while, then ask the clinic for a new one.</source>
        <translation>Demasiados códigos equivocados. Espere un rato y pida uno nuevo a la clínica.</translation>
    </message>
    <message>
        <source>The clinic cannot be reached. Check that this phone is online and that the address is right.</source>
        <translation>No se puede contactar con la clínica. Mire si este teléfono tiene red y si la dirección es correcta.</translation>
    </message>
    <message>
        <source>Another computer answered than the one on your code. Do not go on; call the clinic.</source>
        <translation>Respondió un ordenador que no es el de su código. No siga; llame a la clínica.</translation>
    </message>
    <message>
        <source>This phone is already set up. Erase it in Settings first.</source>
        <translation>Este teléfono ya está preparado. Bórrelo antes en Ajustes.</translation>
    </message>
    <message>
        <source>This is not an address. It looks like clinic.example:7443.</source>
        <translation>Esto no es una dirección. Debe parecerse a clinic.example:7443.</translation>
    </message>
    <message>
        <source>The code has 8 letters and numbers. Please check it.</source>
        <translation>El código tiene 8 letras y números. Por favor, revíselo.</translation>
    </message>
    <message>
        <source>This is not a code from the clinic. It begins with newel:1. Copy all of it.</source>
        <translation>Esto no es un código de la clínica. Empieza por newel:1. Cópielo entero.</translation>
    </message>
</context>
<context>
    <name>newel::home::PlayerModel</name>
    <message>
        <source>Then: this exercise is done</source>
        <translation>Después: fin de este ejercicio</translation>
    </message>
    <message>
        <source>Then: %1</source>
        <translation>Después: %1</translation>
    </message>
    <message numerus="yes">
        <source>of %Ln step(s)</source>
        <translation>
            <numerusform>de %Ln peldaño</numerusform>
            <numerusform>de %Ln peldaños</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>of %Ln time(s)</source>
        <translation>
            <numerusform>de %Ln vez</numerusform>
            <numerusform>de %Ln veces</numerusform>
        </translation>
    </message>
    <message>
        <source>minutes to get ready</source>
        <translation>minutos para prepararse</translation>
    </message>
    <message>
        <source>seconds to get ready</source>
        <translation>segundos para prepararse</translation>
    </message>
    <message>
        <source>minutes to hold</source>
        <translation>minutos de mantener</translation>
    </message>
    <message>
        <source>seconds to hold</source>
        <translation>segundos de mantener</translation>
    </message>
    <message>
        <source>minutes of rest</source>
        <translation>minutos de descanso</translation>
    </message>
    <message>
        <source>seconds of rest</source>
        <translation>segundos de descanso</translation>
    </message>
    <message>
        <source>minutes to change side</source>
        <translation>minutos para cambiar de lado</translation>
    </message>
    <message>
        <source>seconds to change side</source>
        <translation>segundos para cambiar de lado</translation>
    </message>
    <message>
        <source>time %L1 of %L2</source>
        <translation>vez %L1 de %L2</translation>
    </message>
    <message>
        <source>set %L1 of %L2</source>
        <translation>serie %L1 de %L2</translation>
    </message>
    <message>
        <source>round %L1 of %L2</source>
        <translation>vuelta %L1 de %L2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>The phone was away or asleep, so the practice waited. What you were in the middle of is done again.</source>
        <translation>El teléfono estaba en otra cosa o dormido, y la práctica esperó. Lo que quedó a medias se repite.</translation>
    </message>
    <message>
        <source>No voice for your language on this phone: read the words, hear the tones.</source>
        <translation>Este teléfono no tiene voz en su idioma: lea las palabras, oiga los tonos.</translation>
    </message>
    <message>
        <source>The voice does not work just now: read the words, hear the tones.</source>
        <translation>La voz no funciona ahora: lea las palabras, oiga los tonos.</translation>
    </message>
    <message>
        <source>This phone has no sound just now: read the words.</source>
        <translation>Este teléfono no tiene sonido ahora: lea las palabras.</translation>
    </message>
    <message>
        <source>last one</source>
        <translation>la última</translation>
    </message>
    <message>
        <source>The headphones or the loudspeaker are gone, so the practice waited. Connect them again, or go on with the sound of the phone.</source>
        <translation>Los auriculares o el altavoz ya no están, así que la práctica esperó. Conéctelos otra vez, o siga con el sonido del teléfono.</translation>
    </message>
    <message>
        <source>No voice for your language on this phone: read the words; it vibrates at every change.</source>
        <translation>Este teléfono no tiene voz para su idioma: lea las palabras; vibra en cada cambio.</translation>
    </message>
    <message>
        <source>The voice does not work just now: read the words; the phone vibrates at every change.</source>
        <translation>La voz no funciona ahora mismo: lea las palabras; el teléfono vibra en cada cambio.</translation>
    </message>
    <message>
        <source>This phone has no sound just now: read the words; it vibrates at every change.</source>
        <translation>Este teléfono no tiene sonido ahora mismo: lea las palabras; vibra en cada cambio.</translation>
    </message>
</context>
<context>
    <name>newel::home::PracticeModel</name>
    <message>
        <source>Before you start, %L1 of %L2</source>
        <translation>Antes de empezar, %L1 de %L2</translation>
    </message>
    <message>
        <source>Exercise %L1 of %L2</source>
        <translation>Ejercicio %L1 de %L2</translation>
    </message>
    <message>
        <source>%1, about %2</source>
        <translation>%1, cerca de %2</translation>
    </message>
    <message>
        <source>Done for now</source>
        <translation>Terminado por ahora</translation>
    </message>
    <message>
        <source>Stopped, and that is fine</source>
        <translation>Ha parado, y está bien</translation>
    </message>
    <message>
        <source>Stopped for your safety</source>
        <translation>Parado por su seguridad</translation>
    </message>
    <message>
        <source>The clinic asked you to stop</source>
        <translation>La clínica le pidió que pare</translation>
    </message>
    <message>
        <source>Not today</source>
        <translation>Hoy no</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Cerrado</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>no hecho</translation>
    </message>
    <message>
        <source>not done: %1</source>
        <translation>no hecho: %1</translation>
    </message>
    <message numerus="yes">
        <source>%L1 of %Ln time(s)</source>
        <translation>
            <numerusform>%L1 de %Ln vez</numerusform>
            <numerusform>%L1 de %Ln veces</numerusform>
        </translation>
    </message>
    <message>
        <source>, pain %L1 of %L2</source>
        <translation>, dolor %L1 de %L2</translation>
    </message>
    <message>
        <source>, effort %L1 of %L2</source>
        <translation>, esfuerzo %L1 de %L2</translation>
    </message>
</context>
<context>
    <name>newel::home::ProgrammeModel</name>
    <message>
        <source>Programme %L1</source>
        <translation>Programa %L1</translation>
    </message>
    <message>
        <source>No programme yet</source>
        <translation>Aún no hay programa</translation>
    </message>
    <message>
        <source>The clinic has not sent one. It comes by itself once it is signed.</source>
        <translation>La clínica no ha enviado ninguno. Llega solo cuando esté firmado.</translation>
    </message>
    <message>
        <source>From %1, until %2</source>
        <translation>De %1, hasta el %2</translation>
    </message>
</context>
<context>
    <name>newel::home::ReminderModel</name>
    <message>
        <source>Your quiet hours cover it: no reminder here.</source>
        <translation>Cae en sus horas de silencio: aquí no hay aviso.</translation>
    </message>
    <message>
        <source>This phone does not let Newel show reminders. You can allow it in the phone&apos;s own settings. What is due is always on the page for today.</source>
        <translation>Este teléfono no deja que Newel muestre avisos. Puede permitirlo en los ajustes del propio teléfono. Lo que toca está siempre en la página de hoy.</translation>
    </message>
    <message>
        <source>This phone has nothing that shows reminders, so none will come. What is due is always on the page for today.</source>
        <translation>Este teléfono no tiene nada que muestre avisos, así que no llegará ninguno. Lo que toca está siempre en la página de hoy.</translation>
    </message>
    <message>
        <source>They come also when the window of Newel is closed.</source>
        <translation>Llegan también con la ventana de Newel cerrada.</translation>
    </message>
    <message>
        <source>They come only while Newel is open. It may lie behind other windows.</source>
        <translation>Llegan solo mientras Newel está abierto. Puede estar detrás de otras ventanas.</translation>
    </message>
    <message>
        <source>No reminder is due in the coming week.</source>
        <translation>No hay ningún aviso en la próxima semana.</translation>
    </message>
    <message>
        <source>Next: %1.</source>
        <translation>Lo próximo: %1.</translation>
    </message>
    <message>
        <source>tomorrow at %1</source>
        <translation>mañana a las %1</translation>
    </message>
    <message>
        <source>No reminders.</source>
        <translation>Sin avisos.</translation>
    </message>
</context>
<context>
    <name>newel::home::ReminderService</name>
    <message>
        <source>Newel</source>
        <translation>Newel</translation>
    </message>
    <message>
        <source>You asked for a reminder now.</source>
        <translation>Pidió un aviso para ahora.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Más tarde</translation>
    </message>
</context>
<context>
    <name>newel::home::ScanModel</name>
    <message>
        <source>Newel may not use the camera. Allow it in the settings of this phone, or go back and type the code.</source>
        <translation>Newel no puede usar la cámara. Permítalo en los ajustes de este teléfono, o vuelva atrás y escriba el código.</translation>
    </message>
    <message>
        <source>This phone has no camera that Newel can use. Go back and type the code.</source>
        <translation>Este teléfono no tiene una cámara que Newel pueda usar. Vuelva atrás y escriba el código.</translation>
    </message>
    <message>
        <source>The camera does not work just now. Go back and type the code.</source>
        <translation>La cámara no funciona en este momento. Vuelva atrás y escriba el código.</translation>
    </message>
</context>
<context>
    <name>newel::home::SettingsModel</name>
    <message>
        <source>This phone has no sound just now. Every cue is on the screen as well.</source>
        <translation>Este teléfono no tiene sonido ahora. Cada indicación está también en la pantalla.</translation>
    </message>
    <message>
        <source>This phone has no voice for your language. Every cue is on the screen as well.</source>
        <translation>Este teléfono no tiene voz en su idioma. Cada indicación está también en la pantalla.</translation>
    </message>
    <message>
        <source>The voice does not work just now. Every cue is on the screen as well.</source>
        <translation>La voz no funciona ahora. Cada indicación está también en la pantalla.</translation>
    </message>
    <message>
        <source>Get ready. This is how I sound.</source>
        <translation>Prepárese. Así sueno yo.</translation>
    </message>
</context>
<context>
    <name>newel::home::TakeAlongModel</name>
    <message numerus="yes">
        <source>%n record(s) have not reached the clinic and would be lost.</source>
        <translation>
            <numerusform>%n registro no ha llegado a la clínica y se perdería.</numerusform>
            <numerusform>%n registros no han llegado a la clínica y se perderían.</numerusform>
        </translation>
    </message>
    <message>
        <source>The file %1 is in the folder %2.</source>
        <translation>El archivo %1 está en la carpeta %2.</translation>
    </message>
    <message>
        <source>This phone has no folder for documents, or nothing can be written there. Nothing was saved.</source>
        <translation>Este teléfono no tiene carpeta de documentos, o no se puede escribir en ella. No se guardó nada.</translation>
    </message>
    <message>
        <source>Newel, about me, %1</source>
        <translation>Newel, sobre mí, %1</translation>
    </message>
    <message>
        <source>The file could not be written, so nothing was saved. Is there room on this phone? (%1)</source>
        <translation>No se pudo escribir el archivo y no se guardó nada. ¿Hay sitio en este teléfono? (%1)</translation>
    </message>
</context>
<context>
    <name>newel::home::TellLaterModel</name>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Yesterday</source>
        <translation>Ayer</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>newel::home::TodayModel</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>No more practice today. Tomorrow you may start again.</source>
        <translation>Hoy no más práctica. Mañana puede empezar de nuevo.</translation>
    </message>
    <message>
        <source>No practice until the clinic has spoken with you. Please call the clinic.</source>
        <translation>Nada de práctica hasta que la clínica hable con usted. Por favor, llame a la clínica.</translation>
    </message>
    <message>
        <source>Your programme ended on %1. Ask the clinic what comes next.</source>
        <translation>Su programa terminó el %1. Pregunte a la clínica cómo seguir.</translation>
    </message>
    <message>
        <source>Your programme begins on %1.</source>
        <translation>Su programa empieza el %1.</translation>
    </message>
    <message>
        <source>Next: %1.</source>
        <translation>Lo próximo: %1.</translation>
    </message>
    <message>
        <source>No programme yet</source>
        <translation>Aún no hay programa</translation>
    </message>
    <message>
        <source>Your practice is on hold</source>
        <translation>Su práctica está suspendida</translation>
    </message>
    <message>
        <source>All done for today</source>
        <translation>Todo hecho por hoy</translation>
    </message>
    <message>
        <source>Nothing to do today</source>
        <translation>Hoy no hay nada que hacer</translation>
    </message>
    <message numerus="yes">
        <source>%Ln to do</source>
        <translation>
            <numerusform>%Ln por hacer</numerusform>
            <numerusform>%Ln por hacer</numerusform>
        </translation>
    </message>
    <message>
        <source>Stop: %1 put all practice on hold</source>
        <translation>Alto: %1 ha suspendido toda la práctica</translation>
    </message>
    <message>
        <source>Stop: %1 put a part on hold</source>
        <translation>Alto: %1 ha suspendido una parte</translation>
    </message>
    <message>
        <source>From %1</source>
        <translation>De %1</translation>
    </message>
    <message>
        <source>You stopped in the middle of: %1.</source>
        <translation>Paró a mitad de: %1.</translation>
    </message>
    <message>
        <source>The clinic ended this phone&apos;s access. Call the clinic.</source>
        <translation>La clínica ha cerrado el acceso de este teléfono. Llame a la clínica.</translation>
    </message>
    <message>
        <source>Read the message from the clinic first.</source>
        <translation>Lea antes el mensaje de la clínica.</translation>
    </message>
    <message>
        <source>Rest for your skin</source>
        <translation>Descanso para su piel</translation>
    </message>
    <message>
        <source>Leave the prosthesis off</source>
        <translation>No se ponga la prótesis</translation>
    </message>
    <message>
        <source>Your skin needs a rest until the clinic has spoken with you. What you do with the prosthesis on waits.</source>
        <translation>Su piel necesita descanso hasta que la clínica hable con usted. Lo que hace con la prótesis puesta espera.</translation>
    </message>
    <message>
        <source>A photo comes with it: look under Help, Write to your therapist.</source>
        <translation>Trae una foto: mire en Ayuda, Escribir a su terapeuta.</translation>
    </message>
    <message>
        <source>A clip comes with it: look under Help, Write to your therapist.</source>
        <translation>Trae un vídeo: mire en Ayuda, Escribir a su terapeuta.</translation>
    </message>
</context>
<context>
    <name>newel::home::WearModel</name>
    <message>
        <source>Your wear plan begins on %1</source>
        <translation>Su plan de uso empieza el %1</translation>
    </message>
    <message>
        <source>The prosthesis is off</source>
        <translation>La prótesis está quitada</translation>
    </message>
    <message>
        <source>Leave it off until %1</source>
        <translation>No se la ponga hasta las %1</translation>
    </message>
    <message>
        <source>Time is up: take it off now</source>
        <translation>Se acabó el tiempo: quítesela ahora</translation>
    </message>
    <message>
        <source>On since %1</source>
        <translation>Puesta desde %1</translation>
    </message>
    <message>
        <source>Look at your skin now</source>
        <translation>Mire ahora su piel</translation>
    </message>
    <message>
        <source>Watch the red skin</source>
        <translation>Vigile la piel roja</translation>
    </message>
    <message>
        <source>Enough for today</source>
        <translation>Suficiente por hoy</translation>
    </message>
    <message>
        <source>Leave the prosthesis off</source>
        <translation>No se ponga la prótesis</translation>
    </message>
    <message>
        <source>Your plan: %1.</source>
        <translation>Su plan: %1.</translation>
    </message>
    <message>
        <source>In between at least %1 off.</source>
        <translation>Entre medias, al menos %1 sin ella.</translation>
    </message>
    <message>
        <source>Not worn yet today.</source>
        <translation>Hoy aún no la ha llevado.</translation>
    </message>
    <message>
        <source>Worn today: %1.</source>
        <translation>Hoy la ha llevado: %1.</translation>
    </message>
    <message>
        <source>Take it off when it hurts, and look at your skin each time.</source>
        <translation>Quítesela si le duele, y mire su piel cada vez.</translation>
    </message>
    <message>
        <source>This time at most %1.</source>
        <translation>Esta vez, como mucho %1.</translation>
    </message>
    <message>
        <source>Take it off when it hurts, and look at your skin.</source>
        <translation>Quítesela si le duele, y mire su piel.</translation>
    </message>
    <message>
        <source>Then look at your skin.</source>
        <translation>Después mire su piel.</translation>
    </message>
    <message>
        <source>Off again at %1.</source>
        <translation>Quítesela a las %1.</translation>
    </message>
    <message>
        <source>All round the residual limb, with a mirror. Choose all that you see or feel.</source>
        <translation>Alrededor de todo el muñón, con un espejo. Elija todo lo que vea o sienta.</translation>
    </message>
    <message>
        <source>Tomorrow it goes on.</source>
        <translation>Mañana se sigue.</translation>
    </message>
    <message>
        <source>Your skin needs a rest. Leave the prosthesis off until the clinic has spoken with you. Please call the clinic.</source>
        <translation>Su piel necesita descanso. No se ponga la prótesis hasta que la clínica hable con usted. Llame a la clínica.</translation>
    </message>
    <message>
        <source>Your skin stayed red for too long. Wear no more than now, and call the clinic.</source>
        <translation>Su piel siguió roja demasiado tiempo. No la lleve más que ahora y llame a la clínica.</translation>
    </message>
    <message>
        <source>Was the red gone at %1?</source>
        <translation>¿Se había ido lo rojo a las %1?</translation>
    </message>
    <message>
        <source>Leave it off and look again at %1. Is the red gone already?</source>
        <translation>No se la ponga y mire otra vez a las %1. ¿Se ha ido ya lo rojo?</translation>
    </message>
    <message>
        <source>%1 to %2, %3</source>
        <translation>%1 a %2, %3</translation>
    </message>
    <message>
        <source>Told later, not timed.</source>
        <translation>Anotado después, sin cronómetro.</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>Worn today: less than a minute.</source>
        <translation>Hoy la ha llevado: menos de un minuto.</translation>
    </message>
</context>
</TS>
