<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>Card</name>
    <message>
        <source>knee: %1</source>
        <translation>rodilla: %1</translation>
    </message>
    <message>
        <source>foot: %1</source>
        <translation>pie: %1</translation>
    </message>
    <message>
        <source>no prosthesis</source>
        <translation>sin prótesis</translation>
    </message>
    <message>
        <source>I live with limb loss.</source>
        <translation>Vivo con la pérdida de una extremidad.</translation>
    </message>
    <message>
        <source>Mind:</source>
        <translation>Atención:</translation>
    </message>
    <message>
        <source>Emergency:</source>
        <translation>Urgencias:</translation>
    </message>
    <message>
        <source>After a fall</source>
        <translation>Después de una caída</translation>
    </message>
    <message>
        <source>Stay still. Look for pain. Hurt, or a knock on the head: call for help. Look at the prosthesis and the skin before you stand on it.</source>
        <translation>Quieto. Busque si algo duele. Si hay daño o un golpe en la cabeza, pida ayuda. Mire la prótesis y la piel antes de apoyarse.</translation>
    </message>
    <message>
        <source>Leave the prosthesis off and call the clinic</source>
        <translation>Deje la prótesis quitada y llame a la clínica</translation>
    </message>
    <message>
        <source>if the skin is open, blistered or bruised, pain rises, the limb swells, is cold, numb or changes colour, or you have a fever.</source>
        <translation>si la piel está abierta, con ampollas o golpes, si el dolor sube, si el muñón se hincha, está frío, dormido o cambia de color, o si tiene fiebre.</translation>
    </message>
    <message>
        <source>Stop an exercise</source>
        <translation>Pare un ejercicio</translation>
    </message>
    <message>
        <source>if pain passes %1 of 10 or rises by %2 or more, or you feel dizzy or unsteady.</source>
        <translation>si el dolor pasa de %1 de 10 o sube %2 o más, o si se marea o pierde el equilibrio.</translation>
    </message>
    <message>
        <source>Chest pain, a faint, bad breathlessness, sudden weakness or trouble with speech: call %1 at once.</source>
        <translation>Dolor de pecho, desmayo, mucha falta de aire, debilidad repentina o dificultad para hablar: llame al %1 de inmediato.</translation>
    </message>
    <message>
        <source>Card for the wallet</source>
        <translation>Tarjeta para la cartera</translation>
    </message>
    <message>
        <source>It does not replace what your clinic told you.</source>
        <translation>No sustituye lo que le dijo su clínica.</translation>
    </message>
    <message>
        <source>Cut along the line, fold along the dashes, keep it with you.</source>
        <translation>Corte por la línea, doble por los guiones y llévela consigo.</translation>
    </message>
</context>
<context>
    <name>Handout</name>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>%1 out, %2 back</source>
        <translation>%1 de ida, %2 de vuelta</translation>
    </message>
    <message>
        <source>%1 a step</source>
        <translation>%1 por paso</translation>
    </message>
    <message>
        <source> Hold %1 s.</source>
        <translation> Mantenga %1 s.</translation>
    </message>
    <message>
        <source>A photo from your therapist is on your phone, with your programme.</source>
        <translation>Hay una foto de su terapeuta en su teléfono, con su programa.</translation>
    </message>
    <message>
        <source>A clip from your therapist is on your phone, with your programme.</source>
        <translation>Hay un vídeo de su terapeuta en su teléfono, con su programa.</translation>
    </message>
    <message>
        <source>A photo and a clip from your therapist are on your phone, with your programme.</source>
        <translation>Hay una foto y un vídeo de su terapeuta en su teléfono, con su programa.</translation>
    </message>
    <message>
        <source>This exercise is not in your language yet. Ask your therapist to read it with you.</source>
        <translation>Este ejercicio aún no está en su idioma. Pida a su terapeuta que lo lea con usted.</translation>
    </message>
    <message>
        <source>From your therapist:</source>
        <translation>De su terapeuta:</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Tenga cuidado</translation>
    </message>
    <message>
        <source>Stop this exercise if</source>
        <translation>Pare este ejercicio si</translation>
    </message>
    <message>
        <source>How to do it</source>
        <translation>Cómo se hace</translation>
    </message>
    <message>
        <source>What good looks like</source>
        <translation>Cómo se ve bien hecho</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Cuánto</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Ritmo</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Tiempo</translation>
    </message>
    <message numerus="yes">
        <source>about %n minute(s)</source>
        <translation>
            <numerusform>alrededor de %n minuto</numerusform>
            <numerusform>alrededor de %n minutos</numerusform>
        </translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>Lados</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Manos</translation>
    </message>
    <message>
        <source>Prosthesis</source>
        <translation>Prótesis</translation>
    </message>
    <message>
        <source>off</source>
        <translation>quitada</translation>
    </message>
    <message>
        <source>on</source>
        <translation>puesta</translation>
    </message>
    <message>
        <source>Pain passes %1 of 10, or rises by %2 or more.</source>
        <translation>El dolor pasa de %1 de 10, o sube %2 o más.</translation>
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
        <source>Whom to call:</source>
        <translation>A quién llamar:</translation>
    </message>
    <message>
        <source>In an emergency:</source>
        <translation>En una urgencia:</translation>
    </message>
    <message>
        <source>Home programme</source>
        <translation>Programa para casa</translation>
    </message>
    <message>
        <source>Home programme for %1</source>
        <translation>Programa para casa de %1</translation>
    </message>
    <message>
        <source>Limb loss</source>
        <translation>Pérdida de extremidad</translation>
    </message>
    <message>
        <source>Programme</source>
        <translation>Programa</translation>
    </message>
    <message>
        <source>number %1, from %2 to %3</source>
        <translation>número %1, del %2 al %3</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Firmado por</translation>
    </message>
    <message>
        <source>What is new</source>
        <translation>Qué hay de nuevo</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Consejos</translation>
    </message>
    <message>
        <source>Before you start</source>
        <translation>Antes de empezar</translation>
    </message>
    <message>
        <source>Home programme %1</source>
        <translation>Programa para casa %1</translation>
    </message>
    <message>
        <source>Stop if something feels wrong. Clinic %1. Emergency %2.</source>
        <translation>Pare si algo va mal. Clínica %1. Urgencias %2.</translation>
    </message>
    <message>
        <source>Tick what you did</source>
        <translation>Marque lo que hizo</translation>
    </message>
    <message>
        <source>One box for each time. A day left out is not made up for later.</source>
        <translation>Una casilla por cada vez. Un día que falta no se recupera después.</translation>
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
    <name>RecordWords</name>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>1 time</source>
        <translation>1 vez</translation>
    </message>
    <message>
        <source>%1 times</source>
        <translation>%1 veces</translation>
    </message>
    <message>
        <source>1 set of %1</source>
        <translation>1 serie de %1</translation>
    </message>
    <message>
        <source>%1 sets of %2</source>
        <translation>%1 series de %2</translation>
    </message>
    <message>
        <source>, hold %1</source>
        <translation>, mantener %1</translation>
    </message>
    <message>
        <source>%1 up and down, %2 steps</source>
        <translation>%1 arriba y abajo, %2 peldaños</translation>
    </message>
    <message>
        <source>%1 there and back, %2 m</source>
        <translation>%1 ida y vuelta, %2 m</translation>
    </message>
    <message>
        <source>1 minute</source>
        <translation>1 minuto</translation>
    </message>
    <message>
        <source>%1 minutes</source>
        <translation>%1 minutos</translation>
    </message>
    <message>
        <source>%1 times %2</source>
        <translation>%1 veces %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source> and </source>
        <translation> y </translation>
    </message>
    <message>
        <source>no dose</source>
        <translation>sin dosis</translation>
    </message>
    <message>
        <source>%1 out, %2 back</source>
        <translation>%1 de ida, %2 de vuelta</translation>
    </message>
    <message>
        <source>%1 between</source>
        <translation>%1 entre repeticiones</translation>
    </message>
    <message>
        <source>rest %1 between sets</source>
        <translation>descanso de %1 entre series</translation>
    </message>
    <message>
        <source>rest %1 between</source>
        <translation>descanso de %1 entre medias</translation>
    </message>
    <message>
        <source>%1 a step</source>
        <translation>%1 por paso</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>every day</source>
        <translation>todos los días</translation>
    </message>
    <message>
        <source>no days</source>
        <translation>ningún día</translation>
    </message>
    <message>
        <source>Stop if pain passes %1 of 10, or rises by %2 or more.</source>
        <translation>Pare si el dolor pasa de %1 de 10, o sube %2 o más.</translation>
    </message>
    <message>
        <source>%1 held</source>
        <translation>%1 mantenidos</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>just now</source>
        <translation>ahora mismo</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 día</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>nothing due</source>
        <translation>nada previsto</translation>
    </message>
    <message>
        <source>Adherence is the number of occasions done out of the occasions due. An occasion is one exercise on one day and time of day. Part of the dose counts as done; the dose is shown apart. Excused days (a pause, a hold order), days to come and days with no data count in neither number. Extra practice in one week repairs no other week.</source>
        <translation>La adherencia es el número de ocasiones hechas de las ocasiones previstas. Una ocasión es un ejercicio en un día y una franja del día. Una parte de la dosis cuenta como hecha; la dosis se muestra aparte. Los días excusados (una pausa, una orden de suspensión), los días por venir y los días sin datos no cuentan en ninguno de los dos números. La práctica de más en una semana no repara otra semana.</translation>
    </message>
    <message>
        <source>This programme is for you alone. Your therapist examined you, taught you these exercises and signed it.</source>
        <translation>Este programa es solo para usted. Su terapeuta le examinó, le enseñó estos ejercicios y lo firmó.</translation>
    </message>
    <message>
        <source>Stop if something feels wrong, and follow your therapist over this sheet.</source>
        <translation>Pare si algo va mal, y siga a su terapeuta antes que a esta hoja.</translation>
    </message>
    <message>
        <source>This is not an emergency service. In an emergency call the local emergency number.</source>
        <translation>Esto no es un servicio de urgencias. En una urgencia llame al número de emergencias de su zona.</translation>
    </message>
    <message>
        <source>Nobody at the clinic reads messages at once. If you are worried, phone.</source>
        <translation>En la clínica nadie lee los mensajes al momento. Si algo le preocupa, llame.</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>no indicado</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>partial foot</source>
        <translation>parte del pie</translation>
    </message>
    <message>
        <source>ankle disarticulation</source>
        <translation>desarticulación de tobillo</translation>
    </message>
    <message>
        <source>transtibial</source>
        <translation>transtibial</translation>
    </message>
    <message>
        <source>knee disarticulation</source>
        <translation>desarticulación de rodilla</translation>
    </message>
    <message>
        <source>transfemoral</source>
        <translation>transfemoral</translation>
    </message>
    <message>
        <source>hip disarticulation</source>
        <translation>desarticulación de cadera</translation>
    </message>
    <message>
        <source>own knee</source>
        <translation>rodilla propia</translation>
    </message>
    <message>
        <source>locked</source>
        <translation>bloqueada</translation>
    </message>
    <message>
        <source>swings freely</source>
        <translation>oscila libre</translation>
    </message>
    <message>
        <source>yields under load</source>
        <translation>cede bajo carga</translation>
    </message>
    <message>
        <source>no prosthesis</source>
        <translation>sin prótesis</translation>
    </message>
    <message>
        <source>fixed ankle</source>
        <translation>tobillo fijo</translation>
    </message>
    <message>
        <source>moving ankle</source>
        <translation>tobillo móvil</translation>
    </message>
    <message>
        <source>energy storing</source>
        <translation>almacena energía</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>diabetes</source>
        <translation>diabetes</translation>
    </message>
    <message>
        <source>takes insulin</source>
        <translation>usa insulina</translation>
    </message>
    <message>
        <source>heart disease</source>
        <translation>enfermedad del corazón</translation>
    </message>
    <message>
        <source>breathing problem</source>
        <translation>problema respiratorio</translation>
    </message>
    <message>
        <source>high blood pressure</source>
        <translation>tensión alta</translation>
    </message>
    <message>
        <source>vascular disease</source>
        <translation>enfermedad vascular</translation>
    </message>
    <message>
        <source>osteoporosis</source>
        <translation>osteoporosis</translation>
    </message>
    <message>
        <source>seizures</source>
        <translation>convulsiones</translation>
    </message>
    <message>
        <source>back pain</source>
        <translation>dolor de espalda</translation>
    </message>
    <message>
        <source>hernia</source>
        <translation>hernia</translation>
    </message>
    <message>
        <source>pregnancy</source>
        <translation>embarazo</translation>
    </message>
    <message>
        <source>recent surgery</source>
        <translation>cirugía reciente</translation>
    </message>
    <message>
        <source>open wound</source>
        <translation>herida abierta</translation>
    </message>
    <message>
        <source>cannot lie face down</source>
        <translation>no puede tumbarse boca abajo</translation>
    </message>
    <message>
        <source>shoulder problem</source>
        <translation>problema de hombro</translation>
    </message>
    <message>
        <source>neuropathy</source>
        <translation>neuropatía</translation>
    </message>
    <message>
        <source>blood thinners</source>
        <translation>anticoagulantes</translation>
    </message>
    <message>
        <source>hip flexion contracture</source>
        <translation>contractura en flexión de cadera</translation>
    </message>
    <message>
        <source>knee flexion contracture</source>
        <translation>contractura en flexión de rodilla</translation>
    </message>
    <message>
        <source>sound knee pain</source>
        <translation>dolor en la rodilla sana</translation>
    </message>
    <message>
        <source>blood clot in the last four weeks</source>
        <translation>coágulo en las últimas cuatro semanas</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>one cane</source>
        <translation>un bastón</translation>
    </message>
    <message>
        <source>two canes</source>
        <translation>dos bastones</translation>
    </message>
    <message>
        <source>crutches</source>
        <translation>muletas</translation>
    </message>
    <message>
        <source>walker</source>
        <translation>andador</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>no stairs</source>
        <translation>sin escaleras</translation>
    </message>
    <message>
        <source>stairs, no rail</source>
        <translation>escaleras sin pasamanos</translation>
    </message>
    <message>
        <source>rail on the left going up</source>
        <translation>pasamanos a la izquierda al subir</translation>
    </message>
    <message>
        <source>rail on the right going up</source>
        <translation>pasamanos a la derecha al subir</translation>
    </message>
    <message>
        <source>rails on both sides</source>
        <translation>pasamanos a ambos lados</translation>
    </message>
    <message>
        <source>both hands</source>
        <translation>las dos manos</translation>
    </message>
    <message>
        <source>one hand</source>
        <translation>una mano</translation>
    </message>
    <message>
        <source>fingertips</source>
        <translation>puntas de los dedos</translation>
    </message>
    <message>
        <source>no hands</source>
        <translation>sin manos</translation>
    </message>
    <message>
        <source>lying</source>
        <translation>tumbado</translation>
    </message>
    <message>
        <source>seated</source>
        <translation>sentado</translation>
    </message>
    <message>
        <source>prosthesis on</source>
        <translation>prótesis puesta</translation>
    </message>
    <message>
        <source>prosthesis off</source>
        <translation>prótesis quitada</translation>
    </message>
    <message>
        <source>whole body</source>
        <translation>todo el cuerpo</translation>
    </message>
    <message>
        <source>sides in turn</source>
        <translation>lados alternos</translation>
    </message>
    <message>
        <source>one side, then the other</source>
        <translation>un lado y después el otro</translation>
    </message>
    <message>
        <source>prosthesis side</source>
        <translation>lado de la prótesis</translation>
    </message>
    <message>
        <source>sound side</source>
        <translation>lado sano</translation>
    </message>
    <message>
        <source>left side</source>
        <translation>lado izquierdo</translation>
    </message>
    <message>
        <source>right side</source>
        <translation>lado derecho</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation>lunes</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation>martes</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation>miércoles</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation>jueves</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation>viernes</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation>sábado</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation>domingo</translation>
    </message>
    <message>
        <source>Mon</source>
        <translation>lun</translation>
    </message>
    <message>
        <source>Tue</source>
        <translation>mar</translation>
    </message>
    <message>
        <source>Wed</source>
        <translation>mié</translation>
    </message>
    <message>
        <source>Thu</source>
        <translation>jue</translation>
    </message>
    <message>
        <source>Fri</source>
        <translation>vie</translation>
    </message>
    <message>
        <source>Sat</source>
        <translation>sáb</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>dom</translation>
    </message>
    <message>
        <source>pain</source>
        <translation>dolor</translation>
    </message>
    <message>
        <source>dizzy</source>
        <translation>mareo</translation>
    </message>
    <message>
        <source>unsteady</source>
        <translation>falta de equilibrio</translation>
    </message>
    <message>
        <source>trouble with the prosthesis</source>
        <translation>problema con la prótesis</translation>
    </message>
    <message>
        <source>tired</source>
        <translation>cansancio</translation>
    </message>
    <message>
        <source>interrupted</source>
        <translation>interrumpido</translation>
    </message>
    <message>
        <source>chest pain</source>
        <translation>dolor de pecho</translation>
    </message>
    <message>
        <source>breathless</source>
        <translation>falta de aire</translation>
    </message>
    <message>
        <source>a fall</source>
        <translation>una caída</translation>
    </message>
    <message>
        <source>skin</source>
        <translation>piel</translation>
    </message>
    <message>
        <source>hold order</source>
        <translation>orden de suspensión</translation>
    </message>
    <message>
        <source>another reason</source>
        <translation>otro motivo</translation>
    </message>
    <message>
        <source>sudden weakness or trouble with speech</source>
        <translation>debilidad repentina o dificultad para hablar</translation>
    </message>
    <message>
        <source>swelling of a leg</source>
        <translation>hinchazón de una pierna</translation>
    </message>
    <message>
        <source>no time</source>
        <translation>sin tiempo</translation>
    </message>
    <message>
        <source>felt unwell</source>
        <translation>se sintió mal</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>terminado</translation>
    </message>
    <message>
        <source>stopped by the person</source>
        <translation>parado por la persona</translation>
    </message>
    <message>
        <source>ended by a safety rule</source>
        <translation>terminado por una regla de seguridad</translation>
    </message>
    <message>
        <source>ended by a hold order</source>
        <translation>terminado por una orden de suspensión</translation>
    </message>
    <message>
        <source>interrupted and not taken up again</source>
        <translation>interrumpido y no retomado</translation>
    </message>
    <message>
        <source>not begun: the ready check said not today</source>
        <translation>no empezado: la comprobación previa dijo que hoy no</translation>
    </message>
    <message>
        <source>the phone&apos;s clock was set during it</source>
        <translation>se cambió la hora del teléfono durante la práctica</translation>
    </message>
    <message>
        <source>the time zone changed during it</source>
        <translation>cambió el huso horario durante la práctica</translation>
    </message>
    <message>
        <source>the phone or program restarted during it</source>
        <translation>el teléfono o el programa se reinició durante la práctica</translation>
    </message>
    <message>
        <source>the phone&apos;s date was behind the clinic&apos;s</source>
        <translation>la fecha del teléfono iba por detrás de la de la clínica</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Bloqueo</translation>
    </message>
    <message>
        <source>Ask</source>
        <translation>Pregunta</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Precaución</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Red flag</source>
        <translation>Señal de alarma</translation>
    </message>
    <message>
        <source>Not today</source>
        <translation>Hoy no</translation>
    </message>
    <message>
        <source>Left out</source>
        <translation>Omitido</translation>
    </message>
    <message>
        <source>Ended the exercise</source>
        <translation>Terminó el ejercicio</translation>
    </message>
    <message>
        <source>Told the clinic</source>
        <translation>Avisó a la clínica</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>part done</source>
        <translation>hecho en parte</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>no hecho</translation>
    </message>
    <message>
        <source>excused</source>
        <translation>excusado</translation>
    </message>
    <message>
        <source>to come</source>
        <translation>por venir</translation>
    </message>
    <message>
        <source>no data</source>
        <translation>sin datos</translation>
    </message>
    <message numerus="yes">
        <source>%n time(s) a week</source>
        <translation>
            <numerusform>una vez por semana</numerusform>
            <numerusform>%n veces por semana</numerusform>
        </translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message>
        <source>not rated</source>
        <translation>sin valorar</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>an earlier exercise</source>
        <translation>un ejercicio anterior</translation>
    </message>
    <message>
        <source>Progress report</source>
        <translation>Informe de progreso</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Nacimiento</translation>
    </message>
    <message>
        <source>Limb loss</source>
        <translation>Pérdida de extremidad</translation>
    </message>
    <message>
        <source>Mobility level</source>
        <translation>Nivel de movilidad</translation>
    </message>
    <message>
        <source>Period</source>
        <translation>Periodo</translation>
    </message>
    <message>
        <source>number %1 from %2, signed by %3</source>
        <translation>número %1 desde el %2, firmado por %3</translation>
    </message>
    <message>
        <source>Programmes</source>
        <translation>Programas</translation>
    </message>
    <message>
        <source>none in this period</source>
        <translation>ninguno en este periodo</translation>
    </message>
    <message>
        <source>Data</source>
        <translation>Datos</translation>
    </message>
    <message>
        <source>Clinic</source>
        <translation>Clínica</translation>
    </message>
    <message>
        <source>Made</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <translation>%1, por %2</translation>
    </message>
    <message>
        <source>The phone was never heard from: 0 of %1 days have data.</source>
        <translation>Nunca hubo contacto con el teléfono: 0 de %1 días tienen datos.</translation>
    </message>
    <message>
        <source>%1 of %2 days have data; practice on %3 of them. Phone last heard from on %4.</source>
        <translation>%1 de %2 días tienen datos; práctica en %3 de ellos. Último contacto con el teléfono: %4.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Adherence</source>
        <translation>Adherencia</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todo</translation>
    </message>
    <message>
        <source>Exercise</source>
        <translation>Ejercicio</translation>
    </message>
    <message>
        <source>Done of due</source>
        <translation>Hechas de previstas</translation>
    </message>
    <message>
        <source>With extra</source>
        <translation>Con lo de más</translation>
    </message>
    <message>
        <source>Dose</source>
        <translation>Dosis</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Occasions: %1. Told later instead of timed: %2.</source>
        <translation>Ocasiones: %1. Contadas después en vez de cronometradas: %2.</translation>
    </message>
    <message>
        <source>&quot;With extra&quot; counts every occasion done and may pass 100 %. &quot;Dose&quot; is what was done of what was asked, at most all of it on each occasion.</source>
        <translation>&quot;Con lo de más&quot; cuenta toda ocasión hecha y puede pasar del 100 %. &quot;Dosis&quot; es lo hecho de lo pedido, como mucho todo en cada ocasión.</translation>
    </message>
    <message>
        <source>Week by week</source>
        <translation>Semana a semana</translation>
    </message>
    <message>
        <source>Week of</source>
        <translation>Semana del</translation>
    </message>
    <message>
        <source>Dose, pain and effort</source>
        <translation>Dosis, dolor y esfuerzo</translation>
    </message>
    <message>
        <source>No practice was reported in this period.</source>
        <translation>No se comunicó ninguna práctica en este periodo.</translation>
    </message>
    <message>
        <source>Practised</source>
        <translation>Practicado</translation>
    </message>
    <message>
        <source>Repetitions done of asked</source>
        <translation>Repeticiones hechas de pedidas</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Mantenido</translation>
    </message>
    <message>
        <source>Pain before, 0 to 10</source>
        <translation>Dolor antes, 0 a 10</translation>
    </message>
    <message>
        <source>Pain after, 0 to 10</source>
        <translation>Dolor después, 0 a 10</translation>
    </message>
    <message>
        <source>Effort, 0 to 10</source>
        <translation>Esfuerzo, 0 a 10</translation>
    </message>
    <message>
        <source>Pain over the period</source>
        <translation>El dolor en el periodo</translation>
    </message>
    <message>
        <source>After each practice, the highest of its ratings, 0 to 10: %1.</source>
        <translation>Después de cada práctica, la más alta de sus valoraciones, 0 a 10: %1.</translation>
    </message>
    <message>
        <source>%1 points a week (Theil-Sen slope).</source>
        <translation>%1 puntos por semana (pendiente de Theil-Sen).</translation>
    </message>
    <message>
        <source>The last three ratings against the three before: %1 points, a change that counts (2 points or 30 %).</source>
        <translation>Las tres últimas valoraciones frente a las tres anteriores: %1 puntos, un cambio que cuenta (2 puntos o 30 %).</translation>
    </message>
    <message>
        <source>The last three ratings against the three before: %1 points, less than counts as a change (2 points or 30 %).</source>
        <translation>Las tres últimas valoraciones frente a las tres anteriores: %1 puntos, menos de lo que cuenta como cambio (2 puntos o 30 %).</translation>
    </message>
    <message>
        <source>told later</source>
        <translation>contada después</translation>
    </message>
    <message>
        <source>timed</source>
        <translation>cronometrada</translation>
    </message>
    <message>
        <source>Practices</source>
        <translation>Prácticas</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>How known</source>
        <translation>Cómo se sabe</translation>
    </message>
    <message>
        <source>Exercises done</source>
        <translation>Ejercicios hechos</translation>
    </message>
    <message>
        <source>Pain after</source>
        <translation>Dolor después</translation>
    </message>
    <message>
        <source>Effort</source>
        <translation>Esfuerzo</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Final</translation>
    </message>
    <message>
        <source>; taken up again once</source>
        <translation>; retomada una vez</translation>
    </message>
    <message>
        <source>; taken up again %1 times</source>
        <translation>; retomada %1 veces</translation>
    </message>
    <message>
        <source>%1: safety rule. %2</source>
        <translation>%1: regla de seguridad. %2</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1: %2 left out or stopped: %3.</source>
        <translation>%1: %2 omitido o parado: %3.</translation>
    </message>
    <message>
        <source> &quot;%1&quot;</source>
        <translation> &quot;%1&quot;</translation>
    </message>
    <message>
        <source>%1: the person wrote: &quot;%2&quot;</source>
        <translation>%1: la persona escribió: &quot;%2&quot;</translation>
    </message>
    <message>
        <source>%1: time in doubt: %2.</source>
        <translation>%1: hora dudosa: %2.</translation>
    </message>
    <message>
        <source>Stops and events</source>
        <translation>Paradas y sucesos</translation>
    </message>
    <message>
        <source>None reported in this period.</source>
        <translation>Ninguno comunicado en este periodo.</translation>
    </message>
    <message>
        <source>%1: hold lifted by %2. %3</source>
        <translation>%1: suspensión levantada por %2. %3</translation>
    </message>
    <message>
        <source>%1: hold by %2 on %3. %4</source>
        <translation>%1: suspensión de %2 sobre %3. %4</translation>
    </message>
    <message>
        <source>everything</source>
        <translation>todo</translation>
    </message>
    <message>
        <source>Hold orders</source>
        <translation>Órdenes de suspensión</translation>
    </message>
    <message>
        <source>None in this period.</source>
        <translation>Ninguna en este periodo.</translation>
    </message>
    <message>
        <source>Changes of programme</source>
        <translation>Cambios de programa</translation>
    </message>
    <message>
        <source>Programme %1, signed on %2 by %3</source>
        <translation>Programa %1, firmado el %2 por %3</translation>
    </message>
    <message>
        <source>Told to the person: %1</source>
        <translation>Dicho a la persona: %1</translation>
    </message>
    <message>
        <source>The first programme, %1 exercises.</source>
        <translation>El primer programa, %1 ejercicios.</translation>
    </message>
    <message>
        <source>%1: prescribed although the rules ask for a reason (%2). Reason given: %3</source>
        <translation>%1: prescrito aunque las reglas piden un motivo (%2). Motivo dado: %3</translation>
    </message>
    <message>
        <source>Nothing that the person does has changed.</source>
        <translation>No ha cambiado nada de lo que hace la persona.</translation>
    </message>
    <message>
        <source>%1, %2 to %3. Made from what the phone reported; it does not examine or diagnose.</source>
        <translation>%1, %2 a %3. Hecho con lo que comunicó el teléfono; no examina ni diagnostica.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: smallest detectable change (90 %) %2, in %3. %4</source>
        <translation>%1: menor cambio detectable (90 %) %2, en %3. %4</translation>
    </message>
    <message>
        <source>better, beyond error</source>
        <translation>mejor, más allá del error</translation>
    </message>
    <message>
        <source>worse, beyond error</source>
        <translation>peor, más allá del error</translation>
    </message>
    <message>
        <source>within error: no change can be told</source>
        <translation>dentro del error: no se puede decir que haya cambio</translation>
    </message>
    <message>
        <source>no published error to judge it by</source>
        <translation>sin error publicado con que juzgarlo</translation>
    </message>
    <message>
        <source>the studies differ: cannot be told</source>
        <translation>los estudios difieren: no se puede decir</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 puntos</translation>
    </message>
    <message>
        <source>Outcome measures</source>
        <translation>Medidas de resultado</translation>
    </message>
    <message>
        <source>taken once: nothing to compare</source>
        <translation>tomada una vez: nada que comparar</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>None was taken up to the end of this period.</source>
        <translation>No se tomó ninguna hasta el final de este periodo.</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Medida</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Primera</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Última</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>Wearing time and skin</source>
        <translation>Tiempo de uso y piel</translation>
    </message>
    <message>
        <source>No wearing time was told in this period.</source>
        <translation>No se comunicó tiempo de uso en este periodo.</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Days worn</source>
        <translation>Días de uso</translation>
    </message>
    <message>
        <source>Minutes on those days, mean</source>
        <translation>Minutos en esos días, media</translation>
    </message>
    <message>
        <source>Where the skin was not clear</source>
        <translation>Cuando la piel no estaba limpia</translation>
    </message>
</context>
<context>
    <name>TickGrid</name>
    <message>
        <source>Week of %1</source>
        <translation>Semana del %1</translation>
    </message>
    <message numerus="yes">
        <source>any %n day(s)</source>
        <translation>
            <numerusform>un día cualquiera</numerusform>
            <numerusform>%n días cualesquiera</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>WearLines</name>
    <message>
        <source>nothing seen</source>
        <translation>nada que ver</translation>
    </message>
    <message>
        <source>red</source>
        <translation>roja</translation>
    </message>
    <message>
        <source>open skin</source>
        <translation>piel abierta</translation>
    </message>
    <message>
        <source>blister</source>
        <translation>ampolla</translation>
    </message>
    <message>
        <source>drainage</source>
        <translation>supura</translation>
    </message>
    <message>
        <source>new bruise</source>
        <translation>golpe nuevo</translation>
    </message>
    <message>
        <source>rising pain</source>
        <translation>dolor que sube</translation>
    </message>
    <message>
        <source>swelling</source>
        <translation>hinchazón</translation>
    </message>
    <message>
        <source>fever</source>
        <translation>fiebre</translation>
    </message>
    <message>
        <source>numb or cold</source>
        <translation>dormida o fría</translation>
    </message>
    <message>
        <source>a sign of a newer program</source>
        <translation>una señal de un programa más nuevo</translation>
    </message>
    <message>
        <source>skin not looked at</source>
        <translation>piel sin mirar</translation>
    </message>
    <message>
        <source>red, not yet known whether it went</source>
        <translation>roja, aún no se sabe si se fue</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>limpia</translation>
    </message>
    <message>
        <source>red for too long</source>
        <translation>roja demasiado tiempo</translation>
    </message>
    <message>
        <source>a sign of harm</source>
        <translation>una señal de daño</translation>
    </message>
    <message>
        <source>%1 put on, not taken off yet</source>
        <translation>%1 puesta, aún no quitada</translation>
    </message>
    <message>
        <source>%1 to %2, %3 min.</source>
        <translation>%1 a %2, %3 min.</translation>
    </message>
    <message>
        <source>gone after %1 min</source>
        <translation>ida a los %1 min</translation>
    </message>
    <message>
        <source>still red after %1 min</source>
        <translation>aún roja a los %1 min</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Told later, not timed</source>
        <translation>Contado después, no cronometrado</translation>
    </message>
</context>
</TS>
